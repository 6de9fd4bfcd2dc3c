package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class HiddenWaitingTest {

  private final RuleFixture hiddenWaiting = RuleFixture.of(new HiddenWaiting());

  @Test
  void marksALongWait() {
    hiddenWaiting.check("""
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
        stage slab
          all of    syrup
          deposit   syrup into frame-small
          set       for 4 h at 18-20 °C
        sheet syrup-sheet of plain-syrup for home in en-GB
                             ^^^^^^^^^^^ hidden-waiting: `plain-syrup` waits for 4 h, and no note says so
        """);
  }

  @Test
  void mendsMarksALongWait() {
    hiddenWaiting.checkFirstFix("Add a note with the time", """
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
        stage slab
          all of    syrup
          deposit   syrup into frame-small
          set       for 4 h at 18-20 °C
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
        stage slab
          all of    syrup
          deposit   syrup into frame-small
          set       for 4 h at 18-20 °C
        sheet syrup-sheet of plain-syrup for home in en-GB
          note      "The steps wait for 4 h in all; plan for it."
        """);
  }

  @Test
  void leavesAShorterOneAlone() {
    hiddenWaiting.check("""
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
        stage slab
          all of    syrup
          deposit   syrup into frame-small
          set       for 230 min at 18-20 °C
        sheet syrup-sheet of plain-syrup for home in en-GB
        """);
  }

  @Test
  void staysQuietWithANote() {
    hiddenWaiting.check("""
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
        stage slab
          all of    syrup
          deposit   syrup into frame-small
          set       for 12 h at 18-20 °C
        sheet syrup-sheet of plain-syrup for home in en-GB
          note      "Start the day before."
        """);
  }

  @Test
  void leavesCooksAndOtherLanguagesAlone() {
    hiddenWaiting.check("""
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
        stage slab
          all of    syrup
          deposit   syrup into frame-small
          set       for 12 h at 18-20 °C
        sheet syrup-sheet of plain-syrup for chef in en-GB
        sheet other of plain-syrup for home in de-DE
        """);
  }
}
