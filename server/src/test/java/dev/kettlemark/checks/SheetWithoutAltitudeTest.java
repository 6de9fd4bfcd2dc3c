package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class SheetWithoutAltitudeTest {

  private final RuleFixture sheetWithoutAltitude = RuleFixture.of(new SheetWithoutAltitude());

  @Test
  void marksACookWithoutAWordOnAltitude() {
    sheetWithoutAltitude.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
                             ^^^^^^^^^^^ sheet-without-altitude: `plain-syrup` is cooked to a temperature, and no note speaks of altitude
        """);
  }

  @Test
  void mendsMarksACookWithoutAWordOnAltitude() {
    sheetWithoutAltitude.checkFirstFix(
        "Add a note with the temperatures at other altitudes", """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
        """, """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
          note      "At another altitude: cook syrup to 116 °C (241 °F) at 500 m, 114 °C (237 °F) at 1000 m, 113 °C (235 °F) at 1500 m, 111 °C (232 °F) at 2000 m, 109 °C (228 °F) at 2500 m."
        """);
  }

  @Test
  void staysQuietWithANote() {
    sheetWithoutAltitude.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
          note      "Holds at sea level."
        """);
  }

  @Test
  void leavesWhatIsNotCookedAlone() {
    sheetWithoutAltitude.check("""
        formula fruit-dough
          version   1 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        sheet syrup-sheet of fruit-bar for home in en-GB
        """);
  }

  @Test
  void leavesCooksAlone() {
    sheetWithoutAltitude.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for chef in en-GB
        """);
  }
}
