package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * Amounts are checked against hand calculation, temperatures against the definition of the degree
 * Fahrenheit (NIST SP 811, 2008, B.8: t/°F = 1.8·t/°C + 32).
 */
class HoverTest {

  private static final String LIBRARY = """
      --- pantry.kettle
      ingredient sucrose "Pure sucrose"
        role      sweetening
        contains  100 % sucrose
        density   1.6 g/mL
        use       1-5 % of charge  from "common practice, no source"
        allergen  milk
        suits     vegan
      ingredient gum "A | gum"
        contains  10 % water, 90 % fibre
        use       0.2-0.5 % of liquid
      """;

  @Test
  void tellsWhatAnAcceptanceAccepts() {
    String told = FeatureFixture.of("""
        formula f
          percent of charge
          acc<|>ept total-off "as in the old book"
        stage pot
          50 % water
          40 % sucrose
        """ + LIBRARY).hover();
    assertEquals("""
        **total-off** — error: the lines do not add up to 100 %

        A house may set `total-tolerance`.

        Accepts:

        - line 1: the lines add up to 90.00 %, 10.00 % too little""", told);
  }

  @Test
  void tellsThatAnAcceptanceAcceptsNothing() {
    String told = FeatureFixture.of("""
        formula f
        stage pot
          q.s. water
          accept missing-<|>unit "the scale says"
        """).hover();
    assertTrue(told.endsWith("Accepts nothing at present."), told);
  }

  @Test
  void tellsTheUsualValueOfAThreshold() {
    String told = FeatureFixture.of("""
        house quay
          threshold usual-<|>cook 100-170 °C "nobody here makes caramel"
        """).hover();
    assertTrue(told.startsWith("**usual-cook** — the range in which a cook ends"), told);
    assertTrue(told.contains("Usual is 100–180 °C: "), told);
    assertTrue(told.contains("Source: common practice, no source; looked at on "), told);
  }

  @Test
  void tellsAnAmountOnEveryBasis() {
    // By hand: 10 % of 1000 g is 100 g; the liquid is 20 % of the charge; the gum 0.40 % of that.
    // Water: 20 % + 0.1 · 0.08 % = 20.008 %; 0.08 / 20.008 = 0.400 %.
    checkHover("""
        formula f
          percent of charge
          batch   1000 g
          basis   liquid = water in pot
        stage pot
          20 %    water
          0.40 % of liquid  g<|>um
        stage body
          q.s.    sucrose
          all of  pot
          mix
        """, """
        **A \\| gum** — `gum`

        **0.080 % · 0.800 g** in stage `pot`

        | of | share | which weighs |
        | :-- | --: | --: |
        | charge | 0.080 % | 1000.0 g |
        | finished | 0.080 % | 1000.0 g |
        | `liquid` | 0.40 % | 200.0 g |
        | stage `pot` | 0.40 % | 200.8 g |
        | all water weighed in | 0.40 % | 200.1 g |
        | all sugars weighed in | 0.10 % | 799.2 g |

        Usual dose 0.2–0.5 % of liquid: 0.40 % here, within it.

        Contains fibre 90.0 %, water 10.0 %.

        No allergen is declared; the supplier's specification decides.

        Used in 1 formula: `f`.""");
  }

  @Test
  void addsUpTheLinesOfOneMaterialAndJudgesTheDose() {
    String told = hover("""
        formula f
          percent of charge
          batch 200 g
        stage a
          4 % sucrose
          96 % water
        stage b
          all of a
          3 % <|>sucrose
          mix
        """);
    assertContains(told, "**4.00 % · 8.00 g** in stage `a`  \n**3.00 % · 6.00 g** in stage `b`");
    assertContains(
        told, "Usual dose 1–5 % of charge (common practice, no source): 7.00 % here, above it.");
    assertContains(told, "**Allergens: milk.** Suits vegan.");
  }

  @Test
  void tellsOnlySharesWithoutABatch() {
    assertContains(
        hover("""
            formula f
              percent of charge
            stage a
              40 % <|>sucrose
              60 % water
            """),
        "| of | share |\n| :-- | --: |\n| charge | 40.00 % |\n| finished | 40.00 % |\n");
  }

  @Test
  void saysWhenNobodyDescribedAName() {
    assertEquals("""
        **moon-dust** — nobody has described it

        **100.00 % · 10.0 g** in stage `a`

        | of | share | which weighs |
        | :-- | --: | --: |
        | charge | 100.00 % | 10.0 g |
        | finished | 100.00 % | 10.0 g |""", hover("formula f\nstage a\n  10 g moon-<|>dust\n"));
  }

  @Test
  void tellsASubFormulaLikeAnIngredient() {
    String told = hover("""
        formula syrup "House syrup"
          percent of charge
          batch 500 g
        stage pan
          60 % sucrose
          40 % water
        formula f
          percent of charge
          batch 100 g
        stage a
          25 % s<|>yrup
          75 % water
        """);
    assertContains(told, "**House syrup** — formula `syrup`\n\n**25.00 % · 25.0 g** in stage `a`");
    assertContains(told, "100.00 % · charge 500 g · water 40.0 %");
    assertContains(told, "Used in 1 formula: `f`.");
  }

  @Test
  void convertsATemperatureExactly() {
    checkHover("formula f\nstage a\n  10 g sucrose at 4<|>0.5 °C\n", "**40.5 °C = 104.9 °F**");
    checkHover("formula f\nstage a\n  10 g sucrose at 2<|>12 °F\n", "**212 °F = 100 °C**");
    checkHover("house quay\n  room at <|>20-25 °C\n", "**20-25 °C = 68–77 °F**");
  }

  @Test
  void takesAThermometersStepForNoTemperature() {
    checkHover("house quay\n  thermometer probe reads 0.<|>1 °C to 200 °C\n", "nothing");
    checkHover(
        "house quay\n  thermometer probe reads 0.1 °C to 200 <|>°C\n", "**200 °C = 392 °F**");
  }

  @Test
  void tellsWhatACookedChargeKeeps() {
    String told = hover(SYRUP);
    assertContains(told, "**118 °C ± 1 = 244.4 °F ± 1.8**");
    // Handbook chart (H. McGee, On Food and Cooking, 2004): firm ball from 118 to 120 °C.
    assertContains(told, "Sugar stage **firm-ball** (118–120 °C at sea level)");
    assertContains(told, "by the boiling model");
    // Boiling table of pure sucrose, from memory: 60 % boils at 103.0 °C; ±0.5 °C for the model.
    String point = told.replaceAll("(?s).*charge as weighed boils at ([0-9.]+) °C.*", "$1");
    assertEquals(103.0, Double.parseDouble(point), 0.5);
    assertContains(told, "Hot sugar sticks to the skin and burns deeply");
    assertContains(told, "- water left after cooking: ");
    assertContains(told, "  - cooked to: 118 °C (the step)");
    assertTrue(!told.contains("sea level.\n"), told);
  }

  @Test
  void givesTheLocalTargetWhereTheHouseLiesHigh() {
    String told = hover("house quay\n  altitude 1500 m\n" + SYRUP);
    // ISO 2533: 84.56 kPa at 1500 m, where IAPWS-IF97 has water boil at 95.0 °C, five degrees
    // lower.
    assertContains(told, "At 1500 m cook to 112");
    assertContains(told, "for the solids that 118 °C leaves at sea level.");
  }

  @Test
  void tellsAStageStepByStep() {
    checkHover("""
        formula f
          percent of charge
          batch 100 g
        stage fo<|>am "Foam"
          10 % sucrose
          90 % water
          blend sucrose, water until dissolved
          whip until soft-peak
        """, """
        **Foam** — stage `foam` of `f`

        Weighed in 100.0 g · 100.0 g of the charge (100.00 %) · leaves 100.0 g.

        Contains water 90.0 %, sucrose 10.0 %.

        - water activity: 0.97–1.00 at 20–25 °C, if nothing grains

        Temperature when it is done: 21 °C, dissolved, foam, soft-peak.

        | after | weight | temperature | water | state |
        | :-- | --: | --: | --: | --: |
        | blend `sucrose`, `water` | 100.0 g | 21 °C | 90.0 % | dissolved |
        | whip | 100.0 g | 21 °C | 90.0 % | dissolved, foam, soft-peak |""");
  }

  @Test
  void tellsAProductPieceByPiece() {
    // By hand: 18 g centre and 24 % coat of the piece: 18 / 0.76 = 23.684 g; 96 · 18 / 0.95 =
    // 1818.95 g.
    String told = hover("""
        formula f
          percent of charge
        stage a
          100 % sucrose
        product b<|>ite "Bite"
          centre 18 g f
          coat 24 % of finished gum
          make 96 pieces
          loss 5 % of centre
        """);
    assertContains(told, "One piece weighs 23.7 g.");
    assertContains(told, "| coat | `gum` | 5.68 g | 24.00 % |");
    assertContains(told, "96 pieces need 1818.95 g of `f`, loss and spare included");
  }

  @Test
  void tellsABasisAndTheWholes() {
    checkHover("""
        formula f
          percent of charge
          batch 100 g
          basis li<|>quid = water in a
        stage a
          30 % water
          70 % sucrose
        """, "**basis `liquid`** = `water` in `a`\n\n30.00 % of the charge · 30.0 g");
    checkHover(
        "formula f\n  percent of <|>charge\n  batch 50 g\nstage a\n  100 % water\n",
        "**charge** — all that is weighed in, before any water boils away\n\n50 g");
  }

  @Test
  void tellsWordsAndUnits() {
    checkHover(
        "formula f\nstage a\n  whip until soft<|>-peak\n",
        "**soft-peak** — a peak that bends over when the whisk is lifted");
    checkHover("formula f\nstage a\n  wh<|>ip until foam\n", "**whip** — beat air in");
    checkHover("formula f\nstage a\n  stand for 3<|>0 min\n", "**1800 s** (1 min is exactly 60 s)");
    // NIST SP 811 (2008), B.8: cup 2.365882 E-04 m³.
    checkHover(
        "house quay\n  bowl b holds 2 cu<|>ps\n",
        "**473.1765 mL** (1 cup is exactly 236.5882365 mL, as in the United States)");
  }

  @Test
  void tellsAHouseByItsAir() {
    checkHover(
        "house hi<|>gh\n  altitude 0 m\n",
        "**high** — house `high`\n\n0 m above the sea: air at 101.3 kPa, water boils at 100 °C. The room is at 21 °C.");
    checkHover(
        "house quay\n  bowl  bo<|>wl-5   holds 4.8 L\n",
        "**bowl-5** — tool of `quay`\n\nbowl bowl-5 holds 4.8 L");
  }

  @Test
  void saysNothingBetweenWordsAndInComments() {
    checkHover("# sucr<|>ose\nformula f\n", "nothing");
    checkHover("formula f\n  note \"about suc<|>rose\"\n", "nothing");
    checkHover("<|>", "nothing");
  }

  @Test
  void speaksOfTheVariantsOwnAmounts() {
    String told = hover("""
        formula f
          percent of charge
          batch 100 g
        stage a
          10 % gum
          90 % water
        variant v of f
          replace gum by 2<|>0 % sucrose
          change 80 % water
        """);
    assertContains(told, "**20.00 % · 20.0 g** in stage `a`");
    assertContains(told, "| all sugars weighed in | 100.00 % | 20.0 g |");
  }

  private static final String SYRUP = """
      formula f
        percent of charge
        batch 1000 g
      stage pan
        60 % sucrose
        40 % water
        cook to 11<|>8 °C ± 1
      """;

  private static String hover(String marked) {
    return FeatureFixture.of(marked + LIBRARY).hover();
  }

  private static void checkHover(String marked, String expected) {
    assertEquals(expected, hover(marked));
  }

  private static void assertContains(String told, String part) {
    assertTrue(told.contains(part), () -> "`" + part + "` is not in:\n" + told);
  }

  @Test
  void tellsAllergensTracesAndDietOfAProduct() {
    assertContains(
        hover("""
        house pier
          market EU
        product bi<|>te
          centre 8 g honey
          coat 30 % of finished couverture-dark-62
        """),
        "Allergens: soybeans.  \nMay contain: milk, nuts (almond, hazelnut).  \n"
            + "Diet: vegan no (`honey`); vegetarian yes.");
  }

  @Test
  void tellsAllergensOfEachMarketWhereTheyDiffer() {
    String told = hover("""
        formula se<|>t
          percent of charge
        stage pan
          50 % pine-nut
          50 % moon-dust
          mix
        """);
    assertContains(
        told,
        "Allergens (EU): none stated.  \nMay contain (EU): nothing stated.  \n"
            + "Allergens (US): tree nuts (pine nut).");
    assertContains(
        told,
        "Allergens unknown of `moon-dust`.  \n"
            + "Diet: vegan unknown (`moon-dust` silent); vegetarian unknown (`moon-dust` silent).");
  }

  @Test
  void tellsWhatAFactTakesAndWhatItsWordsMean() {
    assertEquals(
        "**status** one word — how far it has come",
        FeatureFixture.of("formula f\n  sta<|>tus bench\n").hover());
    assertEquals(
        "**bench** — made at the bench, still changing",
        FeatureFixture.of("formula f\n  status be<|>nch\n").hover());
    assertEquals(
        "**honey-infant** — honey is not for infants under 12 months",
        FeatureFixture.of("variant v of f\n  withdraw caution honey-in<|>fant\n")
            .hover());
    assertEquals(
        "**doctor** — keeps sucrose from graining",
        FeatureFixture.of("ingredient i\n  role sweetening, doc<|>tor\n").hover());
    assertTrue(FeatureFixture.of("formula f\nstage s\n  no<|>te \"x\"\n")
        .hover()
        .startsWith("**note** quotes"));
  }

  @Test
  void tellsWhatASheetShows() {
    assertEquals(
        "**Nougat at home** — sheet `sh` of `f`, for home: in full sentences, with cautions, in en-US.",
        FeatureFixture.of(
                "formula f\nsheet <|>sh of f for home in en-US\n  title \"Nougat at home\"\n")
            .hover());
  }
}
