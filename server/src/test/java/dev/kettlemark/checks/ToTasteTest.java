package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ToTasteTest {

  private final RuleFixture toTaste = RuleFixture.of(new ToTaste());

  @Test
  void marksAnAmount() {
    toTaste.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          24.50 %   water
           0.50 %   sea-salt to taste
                             ^^^^^^^^ to-taste: `to taste` is another figure for every cook
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void mendsMarksAnAmount() {
    toTaste.checkFirstFix("Leave `to taste` out", """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          24.50 %   water
           0.50 %   sea-salt to taste
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """, """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          24.50 %   water
           0.50 %   sea-salt
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void marksAStep() {
    toTaste.check("""
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
          mix       syrup to taste
                          ^^^^^^^^ to-taste: `to taste` is another figure for every cook
        """);
  }

  @Test
  void mendsMarksAStep() {
    toTaste.checkFirstFix("Leave `to taste` out", """
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
          mix       syrup to taste
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
          mix       syrup
        """);
  }

  @Test
  void leavesTargetsAndNotesAlone() {
    toTaste.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          note      "not to taste"
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }
}
