package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ChargeTakenForFinishedTest {

  private final RuleFixture chargeTakenForFinished = RuleFixture.of(new ChargeTakenForFinished());

  /** By hand: 37 · 42 g / 0.96 = 1618.75 g. */
  @Test
  void marksABatchThatIsTheFinishedWeight() {
    chargeTakenForFinished.check("""
        formula caramel
          batch   1618.75 g
                  ^^^^^^^^^ charge-taken-for-finished: the batch is the finished weight, but only 1273.4 g of it is left after the boil
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C
        """);
  }

  @Test
  void staysQuietWhereNothingBoils() {
    chargeTakenForFinished.check("""
        formula caramel
          batch   1618.75 g
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          mix     for 2 min
        """);
  }

  @Test
  void staysQuietForAnyOtherBatch() {
    chargeTakenForFinished.check("""
        formula caramel
          batch   1640 g
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C
        """);
  }

  @Test
  void staysQuietWithoutAnOrder() {
    chargeTakenForFinished.check("""
        formula caramel
          batch   1618.75 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C
        """);
  }

  @Test
  void seesABatchThatAVariantSets() {
    chargeTakenForFinished.check("""
        formula caramel
          batch   2100 g
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C

        variant small of caramel
          batch   1619 g
                  ^^^^^^ charge-taken-for-finished: the batch is the finished weight, but only 1273.6 g of it is left after the boil
        """);
  }

  @Test
  void setsTheChargeThatLeavesEnough() {
    chargeTakenForFinished.checkFix("Set the batch to 2057.8 g", """
        formula caramel
          batch   1618.75 g
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C
        """, """
        formula caramel
          batch   2057.8 g
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C
        """);
  }

  @Test
  void saysHowManyPiecesTheBatchMakes() {
    chargeTakenForFinished.checkNote("that makes 29 pieces, not 37", """
        formula caramel
          batch   1618.75 g
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C
        """);
  }
}
