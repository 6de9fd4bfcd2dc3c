package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ScaledTimesTest {

  private final RuleFixture scaledTimes = RuleFixture.of(new ScaledTimes());

  @Test
  void marksATimeThatGrewWithTheBatch() {
    scaledTimes.check("""
        formula foam
          batch 1000 g
        stage pan
          10 % egg-white
          90 % white-sugar
          whip for 3 min until soft-peak
        variant large of foam
          batch 4000 g
        stage pan again
          whip for 12 min until soft-peak
                   ^^^^^^ scaled-times: 12 min is 4 times the 3 min of the parent, as the batch is
        """);
  }

  @Test
  void leavesOtherTimesAlone() {
    scaledTimes.check("""
        formula foam
          batch 1000 g
        stage pan
          10 % egg-white
          90 % white-sugar
          whip for 3 min until soft-peak
        variant large of foam
          batch 4000 g
        stage pan again
          whip for 5 min until soft-peak
        """);
  }

  @Test
  void leavesASmallChangeAlone() {
    scaledTimes.check("""
        formula foam
          batch 1000 g
        stage pan
          10 % egg-white
          90 % white-sugar
          whip for 3 min until soft-peak
        variant large of foam
          batch 1100 g
        stage pan again
          whip for 3.3 min until soft-peak
        """);
  }

  @Test
  void keepsTheTime() {
    scaledTimes.checkFix("Keep `3 min`", """
        formula foam
          batch 1000 g
        stage pan
          10 % egg-white
          90 % white-sugar
          whip for 3 min until soft-peak
        variant large of foam
          batch 4000 g
        stage pan again
          whip for 12 min until soft-peak
        """, """
        formula foam
          batch 1000 g
        stage pan
          10 % egg-white
          90 % white-sugar
          whip for 3 min until soft-peak
        variant large of foam
          batch 4000 g
        stage pan again
          whip for 3 min until soft-peak
        """);
  }
}
