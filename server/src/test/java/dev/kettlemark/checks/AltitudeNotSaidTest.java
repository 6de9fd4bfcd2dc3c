package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class AltitudeNotSaidTest {

  private final RuleFixture altitudeNotSaid = RuleFixture.of(new AltitudeNotSaid());

  /** Worked example for 2240 m: water boils at 92.5 °C there (ISO 2533:1975 with IAPWS R7-97). */
  @Test
  void marksATemperatureHighAbove() {
    altitudeNotSaid.check("""
        house high
          altitude 2240 m
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C
                     ^^^^^^ altitude-not-said: what 150 °C leaves at sea level, 140.5 °C leaves at the 2240 m of this kitchen
        """);
  }

  @Test
  void isOnlyWorthKnowingInTheHills() {
    altitudeNotSaid.checkSeverity(Severity.INFORMATION, """
        house high
          altitude 420 m
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C
        """);
  }

  @Test
  void staysQuietNearTheSea() {
    altitudeNotSaid.check("""
        house high
          altitude 250 m
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C
        """);
  }

  @Test
  void staysQuietWhereItIsSaid() {
    altitudeNotSaid.check("""
        house high
          altitude 2240 m
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 143 °C at sea-level
        """);
  }

  @Test
  void staysQuietWhereItWasMeasuredHere() {
    altitudeNotSaid.check("""
        house high
          altitude 2240 m
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 143 °C at altitude
        """);
  }

  @Test
  void asksNobodyWithoutAHouse() {
    altitudeNotSaid.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 143 °C
        """);
  }

  @Test
  void saysThatItHoldsForSeaLevel() {
    altitudeNotSaid.checkFix("Say that it holds for sea level", """
        house high
          altitude 2240 m
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 143 °C +- 1
        """, """
        house high
          altitude 2240 m
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 143 °C +- 1 at sea-level
        """);
  }

  @Test
  void saysThatItHoldsHere() {
    altitudeNotSaid.checkFix("Say that it holds for this kitchen", """
        house high
          altitude 2240 m
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 143 °C
        """, """
        house high
          altitude 2240 m
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 143 °C at altitude
        """);
  }
}
