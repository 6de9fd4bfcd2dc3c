package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class OutdatedSheetTest {

  private final RuleFixture outdatedSheet = RuleFixture.of(new OutdatedSheet());

  @Test
  void marksASheetOfAnOlderVersion() {
    outdatedSheet.check("""
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
          version   1
                    ^ outdated-sheet: issued for version 1, and `plain-syrup` is at version 2
        """);
  }

  @Test
  void mendsMarksASheetOfAnOlderVersion() {
    outdatedSheet.checkFirstFix(
        "Issue it anew for version 2, its notes being read again", """
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
          version   1
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
          version   2
        """);
  }

  @Test
  void marksASheetOfAVersionToCome() {
    outdatedSheet.check("""
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
          version   3
                    ^ outdated-sheet: issued for version 3, and `plain-syrup` is at version 2
        """);
  }

  @Test
  void takesTheVersionOfTheCentre() {
    outdatedSheet.check("""
        formula fruit-dough
          version   4 on 2026-03-01
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
          version   3
                    ^ outdated-sheet: issued for version 3, and `fruit-bar` is at version 4
        """);
  }

  @Test
  void mendsTakesTheVersionOfTheCentre() {
    outdatedSheet.checkFirstFix(
        "Issue it anew for version 4, its notes being read again", """
        formula fruit-dough
          version   4 on 2026-03-01
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
          version   3
        """, """
        formula fruit-dough
          version   4 on 2026-03-01
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
          version   4
        """);
  }

  @Test
  void staysQuietWithTheSameOrNone() {
    outdatedSheet.check("""
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
          version   2
        sheet other of plain-syrup for home in en-GB
          makes     20 pieces
        """);
  }
}
