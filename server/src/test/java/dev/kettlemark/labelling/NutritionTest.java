package dev.kettlemark.labelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.Component;
import dev.kettlemark.quantity.Outcome;
import java.util.List;
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

  /** Nobody has said how much of 12 g of fat is saturated: between 0 and 12. */
  @Test
  void doesNotKnowWhatNobodyStated() {
    assertEquals(
        "`blend` states no `saturates`; without it there are at least 0.0 g in 100 g",
        because(row(Market.EU, "f", "saturates").per100()));
  }

  private static String because(Outcome<Double> amount) {
    return amount.fold(known -> "known: " + known, unknown -> unknown.because());
  }

  /**
   * Article 30 (1) b: fat and the amount of saturates. 60 g of butter with 51.4 % (USDA SR26, food 01145, from
   * memory) and 40 g of an oil with 10 %: 30.84 + 4 = 34.84 g.
   */
  private static final String FATS = """
      ingredient oil
        contains  100 % fat
        saturates 10 %
      ingredient silent-oil
        contains  100 % fat
      ingredient spread
        contains  20 % water, 80 % fat
        saturates 51.4 %
      formula both
        percent of charge
      stage pan
        60 % spread
        40 % oil
        mix
      formula partly
        percent of charge
      stage pan
        60 % spread
        40 % silent-oil
        mix
      formula hardly
        percent of charge
      stage pan
        60.00 % spread
        39.98 % oil
         0.02 % silent-oil
        mix
      product cube
        centre 10 g both
      """;

  private static Nutrition.Row fats(Market market, String of, String name) {
    return Nutrition.of(LabelFixture.of(FATS).label(of), market).rows().stream()
        .filter(row -> row.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void sumsUpWhatTheIngredientsState() {
    Nutrition.Row european = fats(Market.EU, "both", "saturates");
    assertEquals(34.84, european.per100().orElse(Double.NaN), 1e-9);
    assertEquals("35", european.rounded(34.84));
    assertTrue(european.isPart());
    Nutrition.Row american = fats(Market.US, "cube", "saturated fat");
    assertEquals(3.484, american.perPiece().orElseThrow().orElse(Double.NaN), 1e-9);
    assertEquals("3.5", american.rounded(3.484));
  }

  @Test
  void tellsTheLeastWhereOneIngredientIsSilent() {
    assertEquals(
        "`silent-oil` states no `saturates`; without it there are at least 30.8 g in 100 g",
        because(fats(Market.EU, "partly", "saturates").per100()));
  }

  /** 0.02 g of which nobody knows how much is saturated cannot be seen in 35 g. */
  @Test
  void leavesNothingOpenThatTheRoundingHides() {
    assertEquals(34.838, fats(Market.EU, "hardly", "saturates").per100().orElse(Double.NaN), 1e-9);
  }

  /** Guidance of December 2012, table 4: from 10 g to 1 g; below to 0.1 g; to 0.1 g as none. */
  @Test
  void roundsSaturatesAsEuropeDoes() {
    Nutrition.Row saturates = fats(Market.EU, "both", "saturates");
    assertEquals("11", saturates.rounded(10.5));
    assertEquals("10", saturates.rounded(10.0));
    assertEquals("9.9", saturates.rounded(9.94));
    assertEquals("0.2", saturates.rounded(0.16));
    assertEquals("0", saturates.rounded(0.1));
  }

  /** 21 CFR 101.9(c)(2)(i): to 0.5 g below 5 g, to 1 g above, below 0.5 g as zero. */
  @Test
  void roundsSaturatesAsAmericaDoes() {
    Nutrition.Row saturated = fats(Market.US, "both", "saturated fat");
    assertEquals("0", saturated.rounded(0.49));
    assertEquals("0.5", saturated.rounded(0.6));
    assertEquals("4.5", saturated.rounded(4.7));
    assertEquals("5", saturated.rounded(5.2));
    assertEquals("13", saturated.rounded(12.6));
  }

  /** 21 CFR 101.9(c)(4) and (6): sodium to 5 mg up to 140 mg, then to 10 mg; fibre and sugars to 1 g. */
  @Test
  void roundsTheOtherAmericanLines() {
    Nutrition.Row sodium = row(Market.US, "f", "sodium");
    assertEquals("0", sodium.rounded(4.9));
    assertEquals("115", sodium.rounded(114));
    assertEquals("400", sodium.rounded(402));
    for (String name : List.of("dietary fiber", "total sugars", "added sugars")) {
      Nutrition.Row row = row(Market.US, "f", name);
      assertEquals("0", row.rounded(0.49));
      assertEquals("less than 1", row.rounded(0.7));
      assertEquals("5", row.rounded(5.4));
    }
  }

  /** The fat of the row and that of the ingredients' own weights are one, or the saturates would be off. */
  @Test
  void weighsTheFatOfEveryIngredientOnce() {
    Label label = LabelFixture.of(FATS).label("both");
    double fat = label.makeup().uses().stream()
        .mapToDouble(use -> Outcome.both(
                use.share(),
                use.composition(),
                (share, all) ->
                    share.percent() * all.share(Component.Family.FAT).fraction())
            .orElse(Double.NaN))
        .sum();
    assertEquals(fats(Market.EU, "both", "fat").per100().orElse(0.0), fat, 1e-9);
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
