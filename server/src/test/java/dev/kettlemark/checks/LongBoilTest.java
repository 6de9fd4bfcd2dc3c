package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class LongBoilTest {

  private final RuleFixture longBoil = RuleFixture.of(new LongBoil());

  @Test
  void suggestsLessWater() {
    longBoil.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          50 %    water
          cook    to 150 °C
          ^^^^ long-boil: 48.5 % of the pan boils away
        """);
  }

  @Test
  void staysQuietOverAUsualBoil() {
    longBoil.check("""
        formula syrup
          batch   1000 g
        stage pan
          65 %    white-sugar
          35 %    water
          cook    to 150 °C
        """);
  }

  @Test
  void leavesTheWaterOfFruitAlone() {
    longBoil.check("""
        formula fruit
          batch   1000 g
        stage pan
          40 %    white-sugar
          60 %    raspberry-puree
          cook    to 108 °C
        """);
  }

  /** By hand: 70 % and 30 %. */
  @Test
  void lowersTheWater() {
    longBoil.checkFix("Lower the water to 30 % of the pan", """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          50 %    water
          cook    to 150 °C
        """, """
        formula syrup
          batch   1000 g
        stage pan
          70.01 %    white-sugar
          29.99 %    water
          cook    to 150 °C
        """);
  }
}
