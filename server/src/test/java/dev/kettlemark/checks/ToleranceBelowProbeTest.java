package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ToleranceBelowProbeTest {

  private final RuleFixture toleranceBelowProbe = RuleFixture.of(new ToleranceBelowProbe());

  @Test
  void marksATenthOfADegree() {
    toleranceBelowProbe.check("""
        formula syrup
        stage pan
          60 % white-sugar
          40 % water
          cook to 120 °C ± 0.1
                  ^^^^^^^^^^^^ tolerance-below-probe: 120 °C ± 0.1 is tighter than the ± 1 °C that a probe is off by
        """);
  }

  @Test
  void leavesADegreeAlone() {
    toleranceBelowProbe.check("""
        formula syrup
        stage pan
          60 % white-sugar
          40 % water
          cook to 120 °C ± 1
        """);
  }

  @Test
  void marksOneDegreeFahrenheit() {
    toleranceBelowProbe.check("""
        formula syrup
        stage pan
          60 % white-sugar
          40 % water
          cook to 248 °F +- 1
                  ^^^^^^^^^^^ tolerance-below-probe: 248 °F +- 1 is tighter than the ± 1 °C that a probe is off by
        """);
  }

  @Test
  void asksTheHouse() {
    toleranceBelowProbe.check("""
        house small
          threshold probe-accuracy 0.1 °C "compared every month"
        formula syrup
        stage pan
          60 % white-sugar
          40 % water
          cook to 120 °C ± 0.1
        """);
  }

  @Test
  void widens() {
    toleranceBelowProbe.checkFix("Widen to `± 1`", """
        formula syrup
        stage pan
          60 % white-sugar
          40 % water
          cook to 120 °C ± 0.1
        """, """
        formula syrup
        stage pan
          60 % white-sugar
          40 % water
          cook to 120 °C ± 1
        """);
  }

  @Test
  void widensInTheScaleOfTheFigure() {
    toleranceBelowProbe.checkFix("Widen to `± 1.8`", """
        formula syrup
        stage pan
          60 % white-sugar
          40 % water
          cook to 248 °F +- 1
        """, """
        formula syrup
        stage pan
          60 % white-sugar
          40 % water
          cook to 248 °F +- 1.8
        """);
  }
}
