package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TrialOfOlderVersionTest {

  private final RuleFixture trialOfOlderVersion = RuleFixture.of(new TrialOfOlderVersion());

  @Test
  void marksADayBeforeTheVersion() {
    trialOfOlderVersion.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-02-28
                     ^^^^^^^^^^^ trial-of-older-version: `plain-syrup` is now at version 2 of 2026-03-01, and this trial made an older one
          measured  118 °C   end of syrup
        """);
  }

  @Test
  void takesTheDayOfTheVersionForIts() {
    trialOfOlderVersion.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-01
          measured  118 °C   end of syrup
        """);
  }

  @Test
  void believesTheVersionOfTheTrial() {
    trialOfOlderVersion.check("""
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
                     ^^^^^^^^^^^ trial-of-older-version: `plain-syrup` is now at version 2 of 2026-03-01, and this trial made an older one
          version   1
          measured  118 °C   end of syrup
        """);
  }

  @Test
  void believesItAgainstTheDay() {
    trialOfOlderVersion.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-02-01
          version   2
          measured  118 °C   end of syrup
        """);
  }

  @Test
  void leavesAFormulaWithoutVersionAlone() {
    trialOfOlderVersion.check("""
        formula plain-syrup
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-02-01
        """);
  }
}
