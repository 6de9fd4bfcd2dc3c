package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class BelowBoilingTest {

  private final RuleFixture belowBoiling = RuleFixture.of(new BelowBoiling());

  @Test
  void marksCelsiusDigitsInFahrenheit() {
    belowBoiling.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °F
                     ^^^^^^ below-boiling: nothing boils at 47.8 °C; water boils at 100 °C here
        """);
  }

  @Test
  void marksACookThatOnlyWarms() {
    belowBoiling.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 85 °C
                     ^^^^^ below-boiling: nothing boils at 85 °C; water boils at 100 °C here
        """);
  }

  @Test
  void leavesWarmingAlone() {
    belowBoiling.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          warm    to 60 °C
          boil    until dissolved
          cook    to 118 °C
        """);
  }

  /** ISO 2533:1975 gives 77.2 kPa at 2240 m; water boils near 92.5 °C there (IAPWS-IF97). */
  @Test
  void knowsWhereWaterBoilsHigherUp() {
    belowBoiling.check("""
        house high
          altitude 2240 m
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 95 °C
          cook    to 92 °C
                     ^^^^^ below-boiling: nothing boils at 92 °C; water boils at 92.5 °C here
        """);
  }

  /** NIST SP 811 (2008), B.8. */
  @Test
  void writesTheTemperatureThatWasMeant() {
    belowBoiling.checkFix("Write `118 °C`", """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °F
        """, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C
        """);
  }

  @Test
  void writesItInTheScaleThatStood() {
    belowBoiling.checkFix("Write `244 °F`", """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °F
        """, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 244 °F
        """);
  }

  @Test
  void makesAWarmStepOfIt() {
    belowBoiling.checkFix("Write `warm`", """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 85 °C
        """, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          warm    to 85 °C
        """);
  }

  @Test
  void isCertainOnlyWhereTheDigitsFitTheOtherScale() {
    belowBoiling.checkSeverity(Severity.ERROR, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °F
        """);
    belowBoiling.checkSeverity(Severity.WARNING, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 85 °C
        """);
  }
}
