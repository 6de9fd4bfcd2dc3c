package dev.kettlemark.scaling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.quantity.Mass;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class ProductTest {

  private static final String BAR = """
      formula cold-bar
        percent of charge
        batch 1200 g
      stage dough
        60.00 % desiccated-coconut
        40.00 % honey
        mix
      """;

  private static ComputedProduct product(String lines) {
    return LibraryFixture.of(BAR + "product bar\n" + lines).product("bar");
  }

  private static double grams(Mass mass) {
    return mass.grams();
  }

  /** A coat of 28 % of the finished piece on 42 g: 42 / 0.72 × 0.28 = 16.33 g, by hand. */
  @Test
  void aCoatOfTheFinishedPieceCountsItself() {
    ComputedProduct product = product("""
              centre 42 g cold-bar
              coat 28 % of finished couverture-dark-62
              make 20 pieces
              spare 60 % couverture-dark-62
            """);
    assertEquals(58.333, grams(product.pieceGrams().orElse(Mass.ZERO)), 0.001);
    assertEquals(16.333, grams(product.parts().get(1).mass().orElse(Mass.ZERO)), 0.001);
  }

  /** A coat of 28 % of the centre on 42 g: 11.76 g, by hand. */
  @Test
  void aCoatOfTheCentreDoesNot() {
    ComputedProduct product =
        product("  centre 42 g cold-bar\n  coat 28 % of centre couverture-dark-62\n");
    assertEquals(53.76, grams(product.pieceGrams().orElse(Mass.ZERO)), 0.001);
  }

  @Test
  void needsTheCentresWithTheirLoss() {
    ComputedProduct product =
        product("  centre 42 g cold-bar\n  make 37 pieces\n  loss 4 % of centre\n");
    ComputedProduct.Need need = product.needs().get(0);
    assertEquals(1554, grams(need.onPieces()), 1e-9);
    assertEquals(
        new BigFraction(161_875, 100),
        need.scaling().fold(Scaling::batch, unknown -> BigFraction.ZERO));
  }

  /** 20 pieces with 16.333 g of coat and 60 % spare: 522.67 g, by hand. */
  @Test
  void needsSpareForACoatingBath() {
    ComputedProduct product =
        product("  centre 42 g cold-bar\n  coat 28 % of finished couverture-dark-62\n"
            + "  make 20 pieces\n  spare 60 % couverture-dark-62\n");
    assertEquals(522.667, grams(product.needs().get(1).withLoss()), 0.001);
  }

  @Test
  void aPieceOfNothingIsUnknown() {
    ComputedProduct product =
        product("  centre 0 g cold-bar\n  coat 28 % of finished couverture-dark-62\n");
    assertEquals(
        "the piece weighs nothing",
        product.pieceGrams().fold(known -> "known", unknown -> unknown.because()));
  }
}
