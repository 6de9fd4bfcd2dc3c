package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class BurningSyrupTest {

  private final RuleFixture burningSyrup = RuleFixture.of(new BurningSyrup());

  @Test
  void marksFahrenheitDigitsInCelsius() {
    burningSyrup.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 248 °C
                     ^^^^^^ burning-syrup: sugar burns at 248 °C
        """);
  }

  @Test
  void marksABoilToATemperatureAsWell() {
    burningSyrup.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          boil    to 248 °C
                     ^^^^^^ burning-syrup: sugar burns at 248 °C
        """);
  }

  /** Dark caramel ends at 190 °C (375 °F): union of handbook charts. */
  @Test
  void allowsTheDarkestCaramel() {
    burningSyrup.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 190 °C
          cook    to 374 °F
        """);
  }

  @Test
  void marksFahrenheitThatBurns() {
    burningSyrup.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 400 °F
                     ^^^^^^ burning-syrup: sugar burns at 204.4 °C
        """);
  }

  @Test
  void placesWhatAVariantInheritsAtItsParentsName() {
    burningSyrup.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 248 °C
                     ^^^^^^ burning-syrup: sugar burns at 248 °C

        variant thin of syrup
                        ^^^^^ burning-syrup: sugar burns at 248 °C
          change  30 % water
        """);
  }

  /** NIST SP 811 (2008), B.8: t/°C = (t/°F − 32) / 1.8. */
  @Test
  void writesTheTemperatureThatWasMeant() {
    burningSyrup.checkFix("Write `120 °C`", """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 248 °C
        """, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C
        """);
  }

  @Test
  void writesTheOtherScale() {
    burningSyrup.checkFix("Write `248 °F`", """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 248 °C
        """, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 248 °F
        """);
  }

  @Test
  void turnsRangesAndTolerances() {
    burningSyrup.checkFix("Write `118.3–120 °C`", """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 245-248 °C
        """, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118.3–120 °C
        """);
  }

  @Test
  void turnsATolerance() {
    burningSyrup.checkFix("Write `120 °C +- 1.1`", """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 248 °C +- 2
        """, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C +- 1.1
        """);
  }
}
