package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TwoSufficientTest {

  private final RuleFixture twoSufficient = RuleFixture.of(new TwoSufficient());

  @Test
  void marksTheSecondLine() {
    twoSufficient.check("""
        formula syrup
        stage pan
          50.00 % white-sugar
          q.s. glucose-syrup-42
          q.s. water
          ^^^^ two-sufficient: `glucose-syrup-42` and `water` both take up the rest, 50.00 %
        """);
  }

  @Test
  void marksLinesOfTwoStages() {
    twoSufficient.check("""
        formula nougat
        stage foam
          2.00 % egg-white-powder
          q.s. water
        stage syrup
          90.00 % white-sugar
          q.s. water
          ^^^^ two-sufficient: `water` and `water` both take up the rest, 8.00 %
        """);
  }

  @Test
  void staysQuietAboutOne() {
    twoSufficient.check("""
        formula syrup
        stage pan
          50.00 % white-sugar
          q.s. water
        """);
  }

  @Test
  void marksTheLineThatAVariantAdds() {
    twoSufficient.check("""
        formula syrup
        stage pan
          50.00 % white-sugar
          q.s. water
        variant syrup-two of syrup
        stage pan again
          q.s. honey
          ^^^^ two-sufficient: `water` and `honey` both take up the rest, 50.00 %
        """);
  }

  @Test
  void writesTheLaterOneInFigures() {
    twoSufficient.checkFirstFix(
        "Write `25.00 %` of `water`, an equal part of the rest, and adjust it", """
        formula syrup
        stage pan
          50.00 %     white-sugar
          q.s.        glucose-syrup-42
          q.s.        water
        """, """
        formula syrup
        stage pan
          50.00 %     white-sugar
          q.s.        glucose-syrup-42
          25.00 %     water
        """);
  }

  @Test
  void writesTheFirstOneInFigures() {
    twoSufficient.checkFix(
        "Write `25.00 %` of `glucose-syrup-42`, an equal part of the rest, and adjust it",
        """
        formula syrup
        stage pan
          50.00 %     white-sugar
          q.s.        glucose-syrup-42
          q.s.        water
        """, """
        formula syrup
        stage pan
          50.00 %     white-sugar
          25.00 %     glucose-syrup-42
          q.s.        water
        """);
  }

  @Test
  void offersNoFigureWhereNoneIsLeft() {
    twoSufficient.checkNoFix("""
        formula syrup
        stage pan
          100.00 % white-sugar
          q.s. glucose-syrup-42
          q.s. water
        """);
  }
}
