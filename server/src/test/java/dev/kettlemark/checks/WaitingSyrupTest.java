package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class WaitingSyrupTest {

  private final RuleFixture waitingSyrup = RuleFixture.of(new WaitingSyrup());

  @Test
  void marksASyrupThatWaits() {
    waitingSyrup.check("""
        formula meringue
        stage syrup
              ^^^^^ waiting-syrup: `syrup` is cooked, and then waits 15 min at the least, in the order written
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage foam
          30 %    egg-white-pasteurised
          whip    for 15 min until soft-peak
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam
        """);
  }

  @Test
  void allowsTheLimit() {
    waitingSyrup.check("""
        formula meringue
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage foam
          30 %    egg-white-pasteurised
          whip    for 10 min until soft-peak
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam
        """);
  }

  @Test
  void leavesASyrupThatIsCooledAlone() {
    waitingSyrup.check("""
        formula meringue
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
          cool    to 60 °C
        stage foam
          30 %    egg-white-pasteurised
          whip    for 15 min until soft-peak
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam
        """);
  }

  @Test
  void leavesASyrupThatIsCookedLastAlone() {
    waitingSyrup.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          whip    for 15 min until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam
        """);
  }

  @Test
  void isOnlyWorthKnowing() {
    waitingSyrup.checkSeverity(Severity.INFORMATION, """
        formula meringue
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage foam
          30 %    egg-white-pasteurised
          whip    for 15 min until soft-peak
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam
        """);
  }

  @Test
  void cooksItLast() {
    waitingSyrup.checkFix("Cook `syrup` last", """
        formula meringue
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage foam
          30 %    egg-white-pasteurised
          whip    for 15 min until soft-peak
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam
        """, """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          whip    for 15 min until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam
        """);
  }
}
