package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TooFewGramsTest {

  private final RuleFixture tooFewGrams = RuleFixture.of(new TooFewGrams());

  /** By hand: 37 · 42 g = 1554 g; 1200 g · 0.96 = 1152 g. */
  @Test
  void marksAnOrderThatTheBatchDoesNotYield() {
    tooFewGrams.check("""
        formula bar
          batch   1200 g
          makes   37 pieces of 42 g with 4 % loss
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ too-few-grams: the pieces weigh 1554.0 g, but the batch yields 1152.0 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          mix     for 2 min
        """);
  }

  @Test
  void isContentWithEnough() {
    tooFewGrams.check("""
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
  void overlooksRoundingOfTheBatch() {
    tooFewGrams.check("""
        formula caramel
          batch   1618 g
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          mix     for 2 min
        """);
  }

  @Test
  void leavesAChargeTakenForFinishedToItsOwnRule() {
    tooFewGrams.check("""
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

  @Test
  void countsTheErrorOfTheBoilForTheBatch() {
    tooFewGrams.check("""
        formula caramel
          batch   2050 g
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C
        """);
  }

  @Test
  void saysNothingOfAnOrderWithoutSense() {
    tooFewGrams.check("""
        formula caramel
          batch   1200 g
          makes   37 pieces
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          mix     for 2 min
        formula two
          batch   1200 g
          makes   0 pieces of 42 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          mix     for 2 min
        formula three
          batch   1200 g
          makes   37 pieces of 42 g with 100 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          mix     for 2 min
        """);
  }

  @Test
  void setsTheBatch() {
    tooFewGrams.checkFix("Set the batch to 1618.8 g", """
        formula caramel
          batch   1200 g
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          mix     for 2 min
        """, """
        formula caramel
          batch   1618.8 g
          makes   37 pieces of 42 g with 4 % loss
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          mix     for 2 min
        """);
  }

  @Test
  void setsTheBatchThroughTheBoil() {
    tooFewGrams.checkFix("Set the batch to 2057.8 g", """
        formula caramel
          batch   1200 g
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
}
