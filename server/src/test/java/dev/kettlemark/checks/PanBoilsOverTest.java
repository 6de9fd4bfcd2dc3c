package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class PanBoilsOverTest {

  private final RuleFixture panBoilsOver = RuleFixture.of(new PanBoilsOver());

  /** By hand, sugar of 1.55 g/mL beside water: 1140 / 1.55 + 760 = 1496 mL, and 3.5 times that. */
  @Test
  void marksAPanThatIsTooSmall() {
    panBoilsOver.check("""
        house small
          pan small-pan holds 2 L
          pan large-pan holds 9 L
        formula syrup
          batch 1900 g
        stage pan in small-pan
                     ^^^^^^^^^ pan-boils-over: about 1.50 L boil up to 5.23 L, and `small-pan` holds 2.00 L
          60 % white-sugar
          40 % water
          cook to 120 °C
        """);
  }

  @Test
  void isContentWithRoom() {
    panBoilsOver.check("""
        house small
          pan small-pan holds 2 L
          pan large-pan holds 9 L
        formula syrup
          batch 1900 g
        stage pan in large-pan
          60 % white-sugar
          40 % water
          cook to 120 °C
        formula other
          batch 700 g
        stage pan in small-pan
          60 % white-sugar
          40 % water
          cook to 120 °C
        """);
  }

  @Test
  void isAWarningWhileItGoesIn() {
    panBoilsOver.checkSeverity(Severity.WARNING, """
        house small
          pan small-pan holds 2 L
          pan large-pan holds 9 L
        formula syrup
          batch 1900 g
        stage pan in small-pan
          60 % white-sugar
          40 % water
          cook to 120 °C
        """);
  }

  @Test
  void isAnErrorWhereItDoesNotGoIn() {
    panBoilsOver.checkSeverity(Severity.ERROR, """
        house small
          pan small-pan holds 2 L
          pan large-pan holds 9 L
        formula syrup
          batch 2800 g
        stage pan in small-pan
          60 % white-sugar
          40 % water
          cook to 120 °C
        """);
  }

  @Test
  void takesALargerPan() {
    panBoilsOver.checkFix("Take `large-pan`", """
        house small
          pan small-pan holds 2 L
          pan large-pan holds 9 L
        formula syrup
          batch 1900 g
        stage pan in small-pan
          60 % white-sugar
          40 % water
          cook to 120 °C
        """, """
        house small
          pan small-pan holds 2 L
          pan large-pan holds 9 L
        formula syrup
          batch 1900 g
        stage pan in large-pan
          60 % white-sugar
          40 % water
          cook to 120 °C
        """);
  }
}
