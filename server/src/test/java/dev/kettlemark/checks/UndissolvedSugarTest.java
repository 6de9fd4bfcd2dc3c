package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UndissolvedSugarTest {

  private final RuleFixture undissolvedSugar = RuleFixture.of(new UndissolvedSugar());

  /** After Charles (1960) at 122 °C: 87 % of a saturated solution is sucrose, 7 g to each g of water. */
  @Test
  void marksSugarWithHardlyAnyWater() {
    undissolvedSugar.check("""
        formula syrup
          batch   1000 g
        stage pan
          90 %    white-sugar
          10 %    water
          cook    to 140 °C
          ^^^^ undissolved-sugar: 10.0 % water dissolves only 78.2 % of the sugar at its boiling point of 122.4 °C
        """);
  }

  @Test
  void allowsTheUsualSyrup() {
    undissolvedSugar.check("""
        formula syrup
          batch   1000 g
        stage pan
          75 %    white-sugar
          25 %    water
          cook    to 140 °C
        """);
  }

  @Test
  void allowsForTheErrorOfTheModel() {
    undissolvedSugar.check("""
        formula syrup
          batch   1000 g
        stage pan
          84 %    white-sugar
          16 %    water
          cook    to 140 °C
        """);
  }

  @Test
  void leavesDryCaramelAlone() {
    undissolvedSugar.check("""
        formula syrup
          batch   1000 g
        stage pan
          90 %    white-sugar
          10 %    water
          cook    to 170 °C
        """);
  }

  @Test
  void leavesWhatBoilsAboveItsTargetToItsOwnRule() {
    undissolvedSugar.check("""
        formula syrup
          batch   1000 g
        stage pan
          90 %    white-sugar
          10 %    water
          cook    to 110 °C
        """);
  }

  /** By hand: 22 % water, and 78 % of sugar. */
  @Test
  void raisesTheWater() {
    undissolvedSugar.checkFix("Raise the water to 22 % of the pan", """
        formula syrup
          batch   1000 g
        stage pan
          90 %    white-sugar
          10 %    water
          cook    to 140 °C
        """, """
        formula syrup
          batch   1000 g
        stage pan
          78.02 %    white-sugar
          21.98 %    water
          cook    to 140 °C
        """);
  }
}
