package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** The day of the tests is 2026-11-25. */
class LapsedAcceptanceTest {

  private final RuleFixture lapsedAcceptance = RuleFixture.of(new LapsedAcceptance());

  @Test
  void tellsThatTheLastDayIsOver() {
    lapsedAcceptance.check("""
        formula syrup
          accept unused-stage "kept" until 2026-11-24
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ lapsed-acceptance: `unused-stage` was accepted until 2026-11-24
        """);
  }

  @Test
  void holdsOnTheLastDayItself() {
    lapsedAcceptance.check("""
        formula syrup
          accept unused-stage "kept" until 2026-11-25
        """);
  }

  @Test
  void holdsForEverWithoutADay() {
    lapsedAcceptance.check("""
        formula syrup
          accept unused-stage "kept"
        """);
  }

  @Test
  void removesTheLine() {
    lapsedAcceptance.checkFix("Remove the acceptance", """
        formula syrup
          batch 100 g
          accept unused-stage "kept" until 2026-11-24  # until the mould is here
        stage pan
        """, """
        formula syrup
          batch 100 g
        stage pan
        """);
  }
}
