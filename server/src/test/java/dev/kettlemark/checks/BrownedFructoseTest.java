package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class BrownedFructoseTest {

  private final RuleFixture brownedFructose = RuleFixture.of(new BrownedFructose());

  /** By hand: 40.94 % fructose of 82.9 % solids, USDA SR26, food 19296. */
  @Test
  void marksHoneyCookedDark() {
    brownedFructose.check("""
        formula honey-syrup
          batch   1000 g
        stage pan
          93 %    honey
           7 %    water
          cook    to 145 °C
                     ^^^^^^ browned-fructose: 49.4 % of the solids are fructose, most of it of `honey`, and 145 °C browns it
        """);
  }

  @Test
  void allowsTheUsualHoneyOfANougat() {
    brownedFructose.check("""
        formula honey-syrup
          batch   1000 g
        stage pan
          93 %    honey
           7 %    water
          cook    to 128 °C +- 1
        """);
  }

  @Test
  void allowsALittleHoneyInASyrup() {
    brownedFructose.check("""
        formula honey-syrup
          batch   1000 g
        stage pan
          60 %    white-sugar
          20 %    honey
          20 %    water
          cook    to 150 °C
        """);
  }

  @Test
  void isOnlyWorthKnowingWhereTheToleranceReachesOver() {
    brownedFructose.checkSeverity(Severity.INFORMATION, """
        formula honey-syrup
          batch   1000 g
        stage pan
          93 %    honey
           7 %    water
          cook    to 131 °C +- 2
        """);
  }

  @Test
  void cooksLessFar() {
    brownedFructose.checkFix("Cook to 252 °F", """
        formula honey-syrup
          batch   1000 g
        stage pan
          93 %    honey
           7 %    water
          cook    to 293 °F
        """, """
        formula honey-syrup
          batch   1000 g
        stage pan
          93 %    honey
           7 %    water
          cook    to 252 °F
        """);
  }
}
