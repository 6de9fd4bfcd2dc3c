package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class OverfullBowlTest {

  private final RuleFixture overfullBowl = RuleFixture.of(new OverfullBowl());

  @Test
  void marksTooMuch() {
    overfullBowl.check("""
        house small
          bowl small-bowl whips 100-1800 g
          bowl large-bowl whips 1000-8000 g
        formula foam
          batch 5700 g
        stage pan in small-bowl
                     ^^^^^^^^^^ overfull-bowl: 5700 g in `small-bowl` is more than the 1800 g that it whips
          10 % egg-white-powder
          50 % white-sugar
          40 % water
          whip until soft-peak
        """);
  }

  @Test
  void leavesTheLimitAndTooLittleAlone() {
    overfullBowl.check("""
        house small
          bowl small-bowl whips 100-1800 g
          bowl large-bowl whips 1000-8000 g
        formula foam
          batch 1800 g
        stage pan in small-bowl
          10 % egg-white-powder
          50 % white-sugar
          40 % water
          whip until soft-peak
        formula other
          batch 60 g
        stage pan in small-bowl
          10 % egg-white-powder
          50 % white-sugar
          40 % water
          whip until soft-peak
        """);
  }

  @Test
  void isAnErrorWhereTheWhippedMassIsTooMuch() {
    overfullBowl.checkSeverity(Severity.ERROR, """
        house small
          bowl small-bowl whips 100-1800 g
          bowl large-bowl whips 1000-8000 g
        formula foam
          batch 5700 g
        stage pan in small-bowl
          10 % egg-white-powder
          50 % white-sugar
          40 % water
          whip until soft-peak
        """);
  }

  @Test
  void isAWarningWhereWhatIsFoldedInIsTooMuch() {
    overfullBowl.checkSeverity(Severity.WARNING, """
        house small
          bowl small-bowl whips 100-1800 g
          bowl large-bowl whips 1000-8000 g
        formula foam
          batch 2000 g
        stage pan in small-bowl
          10 % egg-white-powder
          50 % white-sugar
          20 % water
          20 % roasted-almond
          whip egg-white-powder, white-sugar, water until soft-peak
          fold roasted-almond
        """);
  }

  @Test
  void takesALargerBowl() {
    overfullBowl.checkFix("Take `large-bowl`", """
        house small
          bowl small-bowl whips 100-1800 g
          bowl large-bowl whips 1000-8000 g
        formula foam
          batch 5700 g
        stage pan in small-bowl
          10 % egg-white-powder
          50 % white-sugar
          40 % water
          whip until soft-peak
        """, """
        house small
          bowl small-bowl whips 100-1800 g
          bowl large-bowl whips 1000-8000 g
        formula foam
          batch 5700 g
        stage pan in large-bowl
          10 % egg-white-powder
          50 % white-sugar
          40 % water
          whip until soft-peak
        """);
  }

  @Test
  void setsTheBatch() {
    overfullBowl.checkFix("Set the batch to 1800 g", """
        house small
          bowl small-bowl whips 100-1800 g
          bowl large-bowl whips 1000-8000 g
        formula foam
          batch 5700 g
        stage pan in small-bowl
          10 % egg-white-powder
          50 % white-sugar
          40 % water
          whip until soft-peak
        """, """
        house small
          bowl small-bowl whips 100-1800 g
          bowl large-bowl whips 1000-8000 g
        formula foam
          batch 1800 g
        stage pan in small-bowl
          10 % egg-white-powder
          50 % white-sugar
          40 % water
          whip until soft-peak
        """);
  }
}
