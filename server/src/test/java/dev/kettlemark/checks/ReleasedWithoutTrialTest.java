package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ReleasedWithoutTrialTest {

  private final RuleFixture releasedWithoutTrial = RuleFixture.of(new ReleasedWithoutTrial());

  @Test
  void marksAReleasedFormulaThatNobodyMade() {
    releasedWithoutTrial.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
                    ^^^^^^^^ released-without-trial: `plain-syrup` is released, and the library holds no trial of it
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void marksAReleasedVariant() {
    releasedWithoutTrial.check("""
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
        variant thin-syrup of plain-syrup
          status    released
                    ^^^^^^^^ released-without-trial: `thin-syrup` is released, and the library holds no trial of it
        """);
  }

  @Test
  void staysQuietWithATrial() {
    releasedWithoutTrial.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
        """);
  }

  @Test
  void leavesADraftAlone() {
    releasedWithoutTrial.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }
}
