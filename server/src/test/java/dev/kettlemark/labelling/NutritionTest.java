package dev.kettlemark.labelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.kettlemark.quantity.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Declarations worked out by hand from the factors of the law.
 *
 * <p>Source: Regulation (EU) No 1169/2011, annexes I, XIV and XV; 21 CFR 101.9(c); rounding as in the tables of the
 * Commission's guidance of 2012 and of the FDA, from memory.
 */
class NutritionTest {

  private static final String MATERIALS = """
      ingredient blend
        contains 10 % water, 40 % sucrose, 10 % starch, 10 % sorbitol, 8 % protein
        contains 12 % fat, 5 % fibre, 2 % acid, 1 % salt, 2 % ethanol
        traits added-sugar
      formula f
        percent of charge
      stage pan
        100 % blend
        mix
      product p
        centre 25 g f
      """;

  private static double per100(Market market, String name) {
    return row(market, "f", name).per100().orElse(Double.NaN);
  }

  private static Nutrition.Row row(Market market, String of, String name) {
    Nutrition nutrition = Nutrition.of(LabelFixture.of(MATERIALS).label(of), market);
    return nutrition.rows().stream()
        .filter(row -> row.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** 50×17 + 10×10 + 8×17 + 12×37 + 5×8 + 2×13 + 2×29 = 1654 kJ; 200 + 24 + 32 + 108 + 10 + 6 + 14 = 394 kcal. */
  @Test
  void countsEuropeanEnergy() {
    Nutrition nutrition = Nutrition.of(LabelFixture.of(MATERIALS).label("f"), Market.EU);
    assertEquals(1654, nutrition.rows().get(0).per100().orElse(0.0), 1e-6);
    assertEquals(394, nutrition.rows().get(1).per100().orElse(0.0), 1e-6);
  }

  /** Carbohydrate: 40 + 10 + 10 of polyols, without fibre. */
  @Test
  void countsEuropeanRows() {
    assertEquals(60, per100(Market.EU, "carbohydrate"), 1e-9);
    assertEquals(40, per100(Market.EU, "sugars"), 1e-9);
    assertEquals(10, per100(Market.EU, "polyols"), 1e-9);
    assertEquals(5, per100(Market.EU, "fibre"), 1e-9);
    assertEquals(1, per100(Market.EU, "salt"), 1e-9);
  }

  /** Carbohydrate by difference: 40 + 10 + 10 + 5 + 2 = 67; sodium: 1 g / 2.5 = 400 mg. */
  @Test
  void countsAmericanRows() {
    assertEquals(67, per100(Market.US, "total carbohydrate"), 1e-9);
    assertEquals(400, per100(Market.US, "sodium"), 1e-9);
    assertEquals(40, per100(Market.US, "added sugars"), 1e-9);
    // 55×4 of carbohydrate and fibre + 10×2.6 + 8×4 + 12×9 + 2×4 of acid + 2×7 = 408.
    assertEquals(408, per100(Market.US, "calories"), 1e-6);
  }

  @Test
  void roundsAsTheMarketDoes() {
    assertEquals("60", row(Market.EU, "f", "carbohydrate").rounded(60.4));
    assertEquals("5.4", row(Market.EU, "f", "fibre").rounded(5.44));
    assertEquals("410", row(Market.US, "f", "calories").rounded(408));
  }

  /** A piece of 25 g holds a quarter. */
  @Test
  void countsAPiece() {
    assertEquals(
        15.0,
        row(Market.EU, "p", "carbohydrate").perPiece().orElseThrow().orElse(Double.NaN),
        1e-9);
  }

  @Test
  void doesNotKnowSaturates() {
    assertFalse(row(Market.EU, "f", "saturates").per100().isKnown());
  }

  @Test
  void knowsThatNoFatHasNoSaturates() {
    Outcome<Double> saturates = Nutrition.of(
            LabelFixture.of(
                    "formula f\n  percent of charge\nstage pan\n  100 % white-sugar\n  mix\n")
                .label("f"),
            Market.EU)
        .rows()
        .get(3)
        .per100();
    assertEquals(0.0, saturates.orElse(Double.NaN), 1e-9);
  }

  /** The lactose of milk is no added sugar, and that of a sweetened milk is not either. */
  @Test
  void countsNoMilkSugarOfMilkAsAdded() {
    Nutrition nutrition = Nutrition.of(
        LabelFixture.of(
                "formula f\n  percent of charge\nstage pan\n  100 % condensed-milk\n  mix\n")
            .label("f"),
        Market.US);
    double added = nutrition.rows().stream()
        .filter(row -> row.name().equals("added sugars"))
        .findFirst()
        .orElseThrow()
        .per100()
        .orElse(Double.NaN);
    // USDA SR26, food 01095: 54.4 g sugars, of which 43.4 g sucrose, split from memory.
    assertEquals(43.4, added, 0.01);
  }

  /** Nothing boils away without water, and what the model boils off makes the rest denser. */
  @Test
  void countsWhatIsLeftAfterTheCook() {
    Label label = LabelFixture.of("formula f\n  percent of charge\nstage pan\n"
            + "  60 % white-sugar\n  40 % water\n  cook to 120 °C\n")
        .label("f");
    double sugars = Nutrition.of(label, Market.EU).rows().stream()
        .filter(row -> row.name().equals("sugars"))
        .findFirst()
        .orElseThrow()
        .per100()
        .orElse(Double.NaN);
    // Boiling table of pure sucrose, from memory: 120 °C leaves some 89 %; ±2 for the model.
    assertEquals(89, sugars, 2);
  }
}
