package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TwoChangesTest {

  private final RuleFixture twoChanges = RuleFixture.of(new TwoChanges());

  @Test
  void marksTheSecondChange() {
    twoChanges.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          changed   "stirred longer"
          changed   "another syrup"
          ^^^^^^^^^^^^^^^^^^^^^^^^^ two-changes: this trial changes 2 things at once
        """);
  }

  @Test
  void staysQuietWithOne() {
    twoChanges.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          changed   "stirred longer"
        """);
  }
}
