package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UncountedInversionTest {

  private final RuleFixture uncountedInversion = RuleFixture.of(new UncountedInversion());

  /** By hand after the rule of the trade: 50 times 0.27 % tartar on sugar is 13 %, within a factor of two. */
  @Test
  void tellsWhatCreamOfTartarSplits() {
    uncountedInversion.check("""
        formula syrup
          batch   1000 g
        stage pan
          74.8 %  white-sugar
           0.2 %  cream-of-tartar
                  ^^^^^^^^^^^^^^^ uncounted-inversion: `cream-of-tartar` splits 7–27 % of the sucrose on the way to 150 °C
          25.0 %  water
          cook    to 150 °C
        """);
  }

  @Test
  void makesUpNoFigureForStrongerAcids() {
    uncountedInversion.check("""
        formula syrup
          batch   1000 g
        stage pan
          74.8 %  white-sugar
           0.2 %  citric-acid
                  ^^^^^^^^^^^ uncounted-inversion: `citric-acid` splits nobody knows how much of the sucrose on the way to 150 °C
          25.0 %  water
          cook    to 150 °C
        """);
  }

  @Test
  void leavesAcidAfterTheBoilAlone() {
    uncountedInversion.check("""
        formula syrup
          batch   1000 g
        stage pan
          74.0 %  white-sugar
          25.0 %  water
          cook    to 150 °C
        stage body
           1.0 %  citric-acid
          all of  pan
          mix     citric-acid, pan
        """);
  }

  @Test
  void leavesAMildBoilAlone() {
    uncountedInversion.check("""
        formula syrup
          batch   1000 g
        stage pan
          74.8 %  white-sugar
           0.2 %  cream-of-tartar
          25.0 %  water
          cook    to 108 °C
        """);
  }
}
