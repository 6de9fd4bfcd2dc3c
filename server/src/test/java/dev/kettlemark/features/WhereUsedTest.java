package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Snapshot;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class WhereUsedTest {

  private static final String LIBRARY = """
      formula paste "Paste"
        percent   of charge
        batch     400 g

      stage bowl
        75.00 %             date-paste
        25.00 %             water
        mix

      formula bar "Bar"
        percent   of charge
        batch     1000 g
        status    released

      stage dough
        40.00 %             paste
        60.00 %             oat-flake
        mix

      stage slab
        all of              dough
        spread    dough between wafer-paper

      variant soft-bar of bar
        change    40.00 % paste

      product bar-20 "Bar, 20 g"
        centre    20 g                bar
        make      50 pieces
      """;

  private static WhereUsed used(String name) {
    return WhereUsed.of(FeatureFixture.of(LIBRARY).snapshot(), name);
  }

  private static Usage by(WhereUsed used, String user) {
    return used.uses().stream()
        .filter(use -> use.name().equals(user))
        .findFirst()
        .orElseThrow(() -> new AssertionError(user + " is not in " + used.uses()));
  }

  /** Hovers name who uses a thing without weighing it; they must not leave out whom the page weighs, nor add one. */
  @Test
  void namesTheSameUsersWithoutWeighing() {
    Snapshot snapshot = FeatureFixture.of(LIBRARY).snapshot();
    for (String material : List.of(
        "date-paste", "water", "oat-flake", "wafer-paper", "paste", "bar", "soft-bar", "none")) {
      Set<String> weighed = WhereUsed.of(snapshot, material).uses().stream()
          .filter(use -> use.path().size() == 2 && !use.part().equals("variant of it"))
          .map(use -> use.user() + " " + use.released() + " " + use.name())
          .collect(Collectors.toSet());
      Set<String> named = new UsageSearch(snapshot)
          .naming(material).stream()
              .map(use -> use.user() + " " + use.released() + " " + use.name())
              .collect(Collectors.toSet());
      assertEquals(weighed, named, material);
    }
  }

  /** By hand: nothing boils away, so 40 % · 75 % = 30 % of the bar, and 300 g in its 1000 g. */
  @Test
  void followsAnIngredientThroughSubFormulaVariantAndProduct() {
    WhereUsed used = used("date-paste");
    assertEquals(
        List.of("paste", "bar", "bar-20", "soft-bar"),
        used.uses().stream().map(Usage::name).toList());
    assertEquals(0.75, by(used, "paste").share().toOptional().orElseThrow().fraction(), 1e-12);
    assertEquals(300, by(used, "paste").grams().toOptional().orElseThrow().grams(), 1e-9);
    assertEquals(0.30, by(used, "bar").share().toOptional().orElseThrow().fraction(), 1e-12);
    assertEquals(300, by(used, "bar").grams().toOptional().orElseThrow().grams(), 1e-9);
    assertEquals(List.of("date-paste", "paste", "bar"), by(used, "bar").path());
    assertTrue(by(used, "bar").released());
  }

  /** By hand: 50 pieces of 20 g need 1000 g of bar, 300 g of date paste among them. */
  @Test
  void countsWhatThePiecesOfAProductNeed() {
    Usage product = by(used("date-paste"), "bar-20");
    assertEquals(Usage.User.PRODUCT, product.user());
    assertEquals(0.30, product.share().toOptional().orElseThrow().fraction(), 1e-12);
    assertEquals(300, product.grams().toOptional().orElseThrow().grams(), 1e-6);
  }

  /** By hand: each gram that is left took one by the yield of the charge, half of it sugar. */
  @Test
  void countsWhatIsWeighedInBeforeItBoilsAway() {
    String cooked = """
        formula syrup "Syrup"
          percent   of charge
          batch     1000 g

        stage pan
          50.00 %             white-sugar
          50.00 %             water
          cook      to 110 °C

        formula mass "Mass"
          percent   of charge
          batch     1000 g

        stage bowl
          30.00 %             syrup
          70.00 %             oat-flake
          mix
        """;
    Snapshot snapshot = FeatureFixture.of(cooked).snapshot();
    WhereUsed used = WhereUsed.of(snapshot, "white-sugar");
    double yield = Formulas.computed("syrup")
        .ask(snapshot)
        .orElseThrow()
        .process()
        .yieldShare()
        .toOptional()
        .orElseThrow()
        .fraction();
    assertTrue(yield < 0.75, "so much is left: " + yield);
    assertEquals(
        0.3 * 0.5 / yield, by(used, "mass").share().toOptional().orElseThrow().fraction(), 1e-9);
    assertEquals(
        150 / yield, by(used, "mass").grams().toOptional().orElseThrow().grams(), 1e-6);
  }

  @Test
  void tellsTheVariantsOfAFormula() {
    Usage variant = by(used("bar"), "soft-bar");
    assertEquals("variant of it", variant.part());
    assertFalse(variant.share().isKnown());
  }

  @Test
  void findsWhatIsLaidAroundTheMassWithoutAWeight() {
    Usage use = by(used("wafer-paper"), "bar");
    assertFalse(use.share().isKnown());
    assertTrue(by(used("wafer-paper"), "bar-20").path().contains("bar"));
  }

  /** All of the dough goes into the slab, which is all of the charge. */
  @Test
  void findsWhereAStageIsTaken() {
    WhereUsed used = used("dough");
    assertEquals(List.of(), used.uses());
    assertEquals(
        List.of("bar", "soft-bar"), used.taken().stream().map(Usage::name).toList());
    assertEquals(1, used.taken().get(0).share().toOptional().orElseThrow().fraction(), 1e-12);
    assertEquals(1000, used.taken().get(0).grams().toOptional().orElseThrow().grams(), 1e-9);
  }

  @Test
  void theHoverSaysTheSame() {
    String sentence = WhereUsed.sentence(FeatureFixture.of(LIBRARY).snapshot(), "paste");
    assertEquals("Used in 2 formulas (2 released): `bar`, `soft-bar`.", sentence);
    assertEquals(
        "No formula or product of this library uses it.",
        WhereUsed.sentence(FeatureFixture.of(LIBRARY).snapshot(), "sea-salt"));
  }

  @Test
  void circlesEnd() {
    String circle = """
        formula one
        stage a
          50 % two
          50 % water

        formula two
        stage a
          50 % one
          50 % water
        """;
    WhereUsed used = WhereUsed.of(FeatureFixture.of(circle).snapshot(), "water");
    assertEquals(4, used.uses().size());
  }
}
