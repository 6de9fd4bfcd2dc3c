package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class IdleAcceptanceTest {

  private final RuleFixture idleAcceptance = RuleFixture.of(new IdleAcceptance());

  @Test
  void tellsWhatIsNotFound() {
    idleAcceptance.check("""
        formula syrup
          accept total-off "as in the old book"
                 ^^^^^^^^^ idle-acceptance: `total-off` finds nothing here
        stage pan
          50 % white-sugar
          50 % water
        """);
  }

  @Test
  void isSilentWhereSomethingIsAccepted() {
    idleAcceptance.check("""
        formula syrup
          accept total-off "as in the old book"
        stage pan
          50 % white-sugar
          40 % water
        """);
  }

  @Test
  void anAcceptanceInAStageSpeaksOfItsLinesOnly() {
    idleAcceptance.check("""
        formula syrup
        stage pan
          50 white-sugar
          50 % water
        stage bowl
          all of pan
          accept missing-unit "the scale says"
                 ^^^^^^^^^^^^ idle-acceptance: `missing-unit` finds nothing in this stage
        """);
  }

  @Test
  void leavesLapsedAndUnknownOnesToOthers() {
    idleAcceptance.check("""
        formula syrup
          accept total-off "kept" until 2026-01-31
          accept no-such "kept"
        """);
  }

  @Test
  void removesTheLineAtTheEndToo() {
    idleAcceptance.checkFix(
        "Remove the acceptance", "formula syrup\n  accept total-off \"kept\"", "formula syrup");
  }
}
