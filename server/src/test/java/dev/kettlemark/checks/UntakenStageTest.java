package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UntakenStageTest {

  private final RuleFixture untakenStage = RuleFixture.of(new UntakenStage());

  @Test
  void marksAStageThatWasNotTaken() {
    untakenStage.check("""
        formula fruit
        stage syrup
          40 %    white-sugar
          20 %    water
          boil    under lid for 3 min
        stage more
          all of  syrup
          cook    to 120 °C
        stage fruit
          40 %    dried-apricot
          mix     dried-apricot into more
                                     ^^^^ untaken-stage: `more` is used in `fruit`, which takes nothing of it
        """);
  }

  @Test
  void isContentWithATake() {
    untakenStage.check("""
        formula fruit
        stage syrup
          40 %    white-sugar
          20 %    water
          boil    under lid for 3 min
        stage more
          all of  syrup
          cook    to 120 °C
        stage fruit
          40 %    dried-apricot
          all of  more
          mix     dried-apricot into more
        """);
  }

  @Test
  void knowsWhatLiesWithinAMass() {
    untakenStage.check("""
        formula fruit
        stage syrup
          40 %    white-sugar
          20 %    water
          boil    under lid for 3 min
        stage more
          all of  syrup
          cook    to 120 °C
        stage fruit
          40 %    dried-apricot
          all of  more
          mix     dried-apricot into syrup
        """);
  }

  @Test
  void leavesWhatIsNoStageToOthers() {
    untakenStage.check("""
        formula fruit
        stage syrup
          40 %    white-sugar
          20 %    water
          boil    under lid for 3 min
        stage more
          all of  syrup
          cook    to 120 °C
        stage fruit
          40 %    dried-apricot
          mix     dried-apricot into sirop
        """);
  }

  @Test
  void takesIt() {
    untakenStage.checkFix("Take `all of more`", """
        formula fruit
        stage syrup
          40 %    white-sugar
          20 %    water
          boil    under lid for 3 min
        stage more
          all of  syrup
          cook    to 120 °C
        stage fruit
          40 %    dried-apricot
          mix     dried-apricot into more
        """, """
        formula fruit
        stage syrup
          40 %    white-sugar
          20 %    water
          boil    under lid for 3 min
        stage more
          all of  syrup
          cook    to 120 °C
        stage fruit
          40 %    dried-apricot
          all of              more
          mix     dried-apricot into more
        """);
  }

  @Test
  void offersNothingWhereItIsTakenElsewhere() {
    untakenStage.checkNoFix("""
        formula fruit
        stage syrup
          40 %    white-sugar
          20 %    water
          boil    under lid for 3 min
        stage more
          all of  syrup
          cook    to 120 °C
        stage fruit
          40 %    dried-apricot
          mix     dried-apricot into syrup
        """);
  }
}
