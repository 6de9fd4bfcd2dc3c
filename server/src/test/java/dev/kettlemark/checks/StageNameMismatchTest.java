package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class StageNameMismatchTest {

  private final RuleFixture stageNameMismatch = RuleFixture.of(new StageNameMismatch());

  /** H. McGee (2004), On Food and Cooking, table of syrup stages. */
  @Test
  void marksAWordFarFromItsTemperature() {
    stageNameMismatch.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C until soft-ball
                                  ^^^^^^^^^ stage-name-mismatch: `soft-ball` lies at 112–116 °C, not at 150 °C
        """);
  }

  /** H. McGee (2004), On Food and Cooking, table of syrup stages. */
  @Test
  void knowsTheStagesOfTheTrade() {
    stageNameMismatch.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 114 °C until soft-ball
          cook    to 119 °C until firm-ball
          cook    to 125 °C until hard-ball
          cook    to 138 °C until soft-crack
          cook    to 150 °C until hard-crack
          cook    to 305 °F until hard-crack
        """);
  }

  @Test
  void allowsADegreeOfRounding() {
    stageNameMismatch.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 117 °C until soft-ball
        """);
  }

  @Test
  void countsTheTolerance() {
    stageNameMismatch.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C +- 1 until soft-ball
        """);
  }

  @Test
  void leavesOtherStatesAlone() {
    stageNameMismatch.check("""
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          boil    to 110 °C until dissolved
        """);
  }

  @Test
  void acceptsTheFigureForTheSeaLevelOrTheKitchen() {
    stageNameMismatch.check("""
        house high
          altitude 2240 m
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C until hard-crack
          cook    to 107 °C until soft-ball
        """);
  }

  @Test
  void tellsTheSeaLevelTemperatureOfAHighKitchen() {
    stageNameMismatch.check("""
        house high
          altitude 2240 m
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 130 °C until thread
                                  ^^^^^^ stage-name-mismatch: `thread` lies at 106–112 °C, not at 130 °C, which is like 138.9 °C at sea level
        """);
  }

  @Test
  void writesTheWordThatFits() {
    stageNameMismatch.checkFix("Write `hard-crack`", """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C until soft-ball
        """, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C until hard-crack
        """);
  }

  @Test
  void cooksToTheMiddleOfTheWord() {
    stageNameMismatch.checkFix("Cook to 114 °C", """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C until soft-ball
        """, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 114 °C until soft-ball
        """);
  }

  @Test
  void cooksToTheMiddleInFahrenheit() {
    stageNameMismatch.checkFix("Cook to 237 °F", """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 300 °F until soft-ball
        """, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 237 °F until soft-ball
        """);
  }

  @Test
  void isMilderWhereHandbooksDiffer() {
    stageNameMismatch.checkSeverity(Severity.ERROR, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 121 °C until soft-ball
        """);
    stageNameMismatch.checkSeverity(Severity.WARNING, """
        formula syrup
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 119 °C until soft-ball
        """);
  }
}
