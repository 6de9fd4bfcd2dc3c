package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class VariantChangedSinceTrialTest {

  private final RuleFixture variantChangedSinceTrial =
      RuleFixture.of(new VariantChangedSinceTrial());

  @Test
  void marksAParentThatHasChanged() {
    variantChangedSinceTrial.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        variant thin-syrup of plain-syrup
                              ^^^^^^^^^^^ variant-changed-since-trial: `plain-syrup` is at version 2 of 2026-03-01, and `thin-syrup` was last made on 2026-02-01
        trial T-1 of thin-syrup on 2026-02-01
        """);
  }

  @Test
  void marksAVariantThatHasChanged() {
    variantChangedSinceTrial.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        variant thin-syrup of plain-syrup
          version   3 on 2026-06-01
          ^^^^^^^^^^^^^^^^^^^^^^^^^ variant-changed-since-trial: version 3 of 2026-06-01 is newer than the last trial of `thin-syrup`, of 2026-04-01
        trial T-1 of thin-syrup on 2026-04-01
        """);
  }

  @Test
  void staysQuietAfterANewTrial() {
    variantChangedSinceTrial.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        variant thin-syrup of plain-syrup
        trial T-1 of thin-syrup on 2026-02-01
        trial T-2 of thin-syrup on 2026-03-02
        """);
  }

  @Test
  void leavesAVariantWithoutTrialAlone() {
    variantChangedSinceTrial.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        variant thin-syrup of plain-syrup
        """);
  }

  @Test
  void leavesACircleAlone() {
    variantChangedSinceTrial.check("""
        variant a of b
        variant b of a
        trial T-1 of a on 2026-03-02
        """);
  }

  @Test
  void isWorthKnowing() {
    variantChangedSinceTrial.checkSeverity(Severity.INFORMATION, """
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        variant thin-syrup of plain-syrup
        trial T-1 of thin-syrup on 2026-02-01
        """);
  }

  @Test
  void isAWarningOnceReleased() {
    variantChangedSinceTrial.checkSeverity(Severity.WARNING, """
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        variant thin-syrup of plain-syrup
          status    released
        trial T-1 of thin-syrup on 2026-02-01
        """);
  }
}
