package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class DuplicateNameTest {

  private final RuleFixture duplicateName = RuleFixture.of(new DuplicateName());

  @Test
  void marksTwoSectionsOfOneName() {
    duplicateName.check("""
        formula one
                ^^^ duplicate-name: `one` is described 2 times, and this one counts

        variant one of two
                ^^^ duplicate-name: `one` is described 2 times, and another one counts
        """);
  }

  @Test
  void looksInOtherFiles() {
    duplicateName.check("""
        ingredient moon-sugar
                   ^^^^^^^^^^ duplicate-name: `moon-sugar` is described 2 times, and this one counts
        --- other.kettle
        ingredient moon-sugar
                   ^^^^^^^^^^ duplicate-name: `moon-sugar` is described 2 times, and another one counts
        """);
  }

  @Test
  void allowsOneNameForThingsOfDifferentKinds() {
    duplicateName.check("""
        formula dome

        product dome

        house dome
        """);
  }

  @Test
  void allowsOverridingThePantry() {
    duplicateName.check("""
        ingredient honey
        """);
  }

  @Test
  void marksTwoStagesOfOneName() {
    duplicateName.check("""
        formula one
        stage syrup
          50 %    white-sugar
        stage syrup
              ^^^^^ duplicate-name: the formula has two stages `syrup`
          50 %    honey
        """);
  }

  @Test
  void allowsAStageThatAVariantWritesAnew() {
    duplicateName.check("""
        formula one
        stage syrup
          50 %    white-sugar

        variant two of one
        stage syrup again
          cook    to 120 °C
        """);
  }

  @Test
  void callsTheSecondStageOtherwise() {
    duplicateName.checkFix("Call this one `syrup-2`", """
        formula one
        stage syrup
          50 %    white-sugar
        stage syrup
          50 %    honey
        """, """
        formula one
        stage syrup
          50 %    white-sugar
        stage syrup-2
          50 %    honey
        """);
  }

  @Test
  void callsASectionOtherwise() {
    duplicateName.checkFirstFinding("Call this one `one-2`", """
        formula one

        formula one
        """, """
        formula one-2

        formula one
        """);
  }
}
