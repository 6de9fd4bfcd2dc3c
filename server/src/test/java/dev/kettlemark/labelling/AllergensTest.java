package dev.kettlemark.labelling;

import static dev.kettlemark.labelling.LabelFixture.names;
import static dev.kettlemark.labelling.LabelFixture.texts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Allergens by the lists of the markets.
 *
 * <p>Source, from memory: Regulation (EU) No 1169/2011, annex II, fourteen entries; FALCPA 2004 and the FASTER Act
 * 2021, nine entries.
 */
class AllergensTest {

  private static final LabelFixture BENCH = LabelFixture.of("""
      house pier
        market EU, US
        allergens-on-site milk, sesame, egg
      formula nut-mix
        percent of charge
        batch 100 g
      stage mix
        60 % roasted-almond
        40 % pine-nut
        mix
      formula bar
        percent of charge
        batch 200 g
      stage body
        50 % nut-mix
        30 % honey
        20 % egg-white-powder
        mix
      stage slab
        all of body
        deposit body between wafer-sheet
        dust body with skim-milk-powder
      variant plain-bar of bar
        replace egg-white-powder by 20 % soy-whipping-protein
      product bite
        centre 6 g nut-mix
        coat 40 % of finished couverture-dark-62
        may-contain walnut
      """);

  @Test
  void followsSubFormulasWafersAndDusting() {
    assertEquals(
        "cereals containing gluten (gluten, wheat); eggs; soybeans; milk; nuts (almond)",
        texts(BENCH.allergens("bar", Market.EU).contained()));
  }

  /** Almonds are 60 % of the mix and the mix half of the bar, and nothing boils away: 30 g in 100 g. */
  @Test
  void tellsHowMuchAndByWhichWay() {
    assertEquals(30.0, BENCH.grams("bar", "roasted-almond"), 1e-9);
    IngredientUse almond = BENCH.label("bar").allergens().sources("almond").get(0);
    assertEquals("nut-mix > roasted-almond", almond.ways().get(0).words());
  }

  @Test
  void countsPineNutsInTheUnitedStatesOnly() {
    assertEquals(
        "milk; eggs; tree nuts (almond, pine nut); wheat; soybeans",
        texts(BENCH.allergens("bar", Market.US).contained()));
    assertTrue(BENCH
        .allergens("bar", Market.EU)
        .notes()
        .contains("`pine nut` is no listed allergen in the European Union"));
  }

  @Test
  void takesAVariantsOwnIngredients() {
    Allergens allergens = BENCH.label("plain-bar").allergens();
    assertTrue(allergens.holds("soy"));
    assertFalse(allergens.holds("egg"));
  }

  @Test
  void carriesTracesUpAndAddsTheProductsOwn() {
    MarketAllergens bite = BENCH.allergens("bite", Market.EU);
    assertEquals("soybeans; nuts (almond)", texts(bite.contained()));
    // The couverture warns of milk, hazelnut and almond; almond is in it already.
    assertEquals("milk; nuts (hazelnut, walnut)", texts(bite.mayContain()));
  }

  @Test
  void tellsWhatTheHouseHandlesBesides() {
    assertEquals(List.of("sesame", "egg"), BENCH.label("bite").allergens().onSite());
  }

  @Test
  void knowsTheNumberOfEntriesOfEachLaw() {
    assertEquals(14, AllergenGroup.of(Market.EU).size());
    assertEquals(
        9, AllergenGroup.of(Market.US).stream().filter(AllergenGroup::isMajor).count());
  }

  /** Coconut stands in neither list: never in the Union's, and no longer in the FDA's since January 2025. */
  @Test
  void leavesCoconutOut() {
    LabelFixture bench = LabelFixture.of(
        "formula f\n  percent of charge\nstage a\n" + "  100 % desiccated-coconut\n  mix\n");
    assertEquals(List.of(), bench.allergens("f", Market.EU).contained());
    assertEquals(List.of(), bench.allergens("f", Market.US).contained());
  }

  /** Barley is gluten for the Union and no wheat for the United States. */
  @Test
  void tellsBarleyFromWheat() {
    LabelFixture bench = LabelFixture.of(
        "formula f\n  percent of charge\nstage a\n" + "  100 % malt-extract\n  mix\n");
    assertEquals(
        "cereals containing gluten (gluten)",
        texts(bench.allergens("f", Market.EU).contained()));
    assertEquals("", texts(bench.allergens("f", Market.US).contained()));
  }

  /** Annex II, point 1 (a): glucose syrups of wheat; the United States know no such exemption. */
  @Test
  void exemptsGlucoseSyrupOfWheatInTheUnion() {
    LabelFixture bench = LabelFixture.of("""
        ingredient wheat-glucose
          contains 20 % water, 80 % glucose
          allergen wheat
          gluten no
          suits vegan, vegetarian
          label "glucose syrup (wheat)"
        formula f
          percent of charge
        stage a
          100 % wheat-glucose
          mix
        """);
    MarketAllergens union = bench.allergens("f", Market.EU);
    assertEquals("", texts(union.contained()));
    assertTrue(union.notes().get(0).startsWith("`wheat-glucose` needs no statement of wheat: "));
    assertEquals("wheat", texts(bench.allergens("f", Market.US).contained()));
  }

  @Test
  void saysWhoIsSilent() {
    LabelFixture bench = LabelFixture.of("""
        ingredient moon-dust
          contains 100 % sucrose
        formula f
          percent of charge
        stage a
          50 % moon-dust
          50 % nobody-knows
          mix
        """);
    assertEquals("moon-dust, nobody-knows", names(bench.label("f").allergens().silent()));
  }

  private static LabelFixture apricots(String percent, String allergen) {
    return LabelFixture.of("""
        ingredient sour-apricot
          contains 30 %% water, 70 %% glucose
          allergen %s
          gluten no
          label "dried apricots"
        formula f
          percent of charge
        stage a
          %s sour-apricot
          q.s. date-paste
          mix
        """.formatted(allergen, percent));
  }

  /** By hand: 1500 mg/kg × 0.5 % = 7.5 mg/kg, within 10; × 1 % = 15 mg/kg, above. */
  @Test
  void declaresSulphitesAboveTenMilligrams() {
    assertEquals(
        "",
        texts(
            apricots("0.5 %", "sulphite at 1500 ppm").allergens("f", Market.EU).contained()));
    MarketAllergens above = apricots("1 %", "sulphite at 1500 ppm").allergens("f", Market.EU);
    assertEquals("sulphur dioxide and sulphites", texts(above.contained()));
    assertEquals(
        List.of("sulphur dioxide comes to 15 mg/kg, above the limit of 10 mg/kg"), above.notes());
  }

  /** 10 mg/kg itself is not "more than 10 mg/kg". */
  @Test
  void takesTheLimitItselfAsWithin() {
    assertEquals(
        "",
        texts(apricots("1 %", "sulphite at 1000 ppm").allergens("f", Market.EU).contained()));
  }

  @Test
  void countsSulphitesOfAnUnknownDose() {
    MarketAllergens unknown = apricots("0.5 %", "sulphite").allergens("f", Market.EU);
    assertEquals("sulphur dioxide and sulphites", texts(unknown.contained()));
    assertEquals(
        List.of("how much sulphur dioxide there is, is unknown: `sour-apricot` does not say how"
            + " much sulphur dioxide it holds"),
        unknown.notes());
  }

  /** Cooking to 150 °C leaves half a percent of water of 50 % syrup; what is used then counts on half the weight. */
  @Test
  void countsOnTheFinishedWeight() {
    LabelFixture bench = LabelFixture.of("""
        formula f
          percent of charge
        stage pan
          50 % white-sugar
          40 % water
          10 % milk
          cook to 120 °C
        """);
    double yield = bench.grams("f", "white-sugar") / 50;
    assertTrue(yield > 1.5 && yield < 2, "50 % of the charge is " + 50 * yield + " g in 100 g");
    assertEquals(10 * yield, bench.grams("f", "milk"), 1e-9);
  }

  /** Half of the foam stays in the bowl: 20 % × 1/2 on 90 % of the charge. */
  @Test
  void countsOnlyWhatIsTaken() {
    LabelFixture bench = LabelFixture.of("""
        formula f
          percent of charge
        stage foam
          20 % egg-white-pasteurised
          mix
        stage body
          80 % caster-sugar
          part 1/2 of foam
          mix
        """);
    assertEquals(100 * 10.0 / 90, bench.grams("f", "egg-white-pasteurised"), 1e-6);
  }

  @Test
  void endsInACircleAndInTheDeep() {
    LabelFixture circle = LabelFixture.of("""
        formula a
          percent of charge
        stage pan
          50 % b
          50 % milk
          mix
        formula b
          percent of charge
        stage pan
          50 % a
          50 % egg-white-pasteurised
          mix
        """);
    assertTrue(circle.label("a").allergens().holds("milk"));
    assertEquals("b", names(circle.label("a").allergens().silent()));
    StringBuilder deep = new StringBuilder();
    for (int i = 0; i < 40; i++) {
      deep.append("formula f")
          .append(i)
          .append("\n  percent of charge\nstage pan\n  50 % f")
          .append(i + 1)
          .append("\n  20 % f")
          .append(i + 1)
          .append("\n  30 % almond\n  mix\n");
    }
    LabelFixture chain = LabelFixture.of(deep.toString());
    assertTrue(chain.label("f39").allergens().holds("almond"));
    assertTrue(chain.label("f0").allergens().silent().size() > 0);
  }
}
