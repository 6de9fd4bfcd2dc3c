package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnfilledReasonTest {

  private final RuleFixture unfilledReason = RuleFixture.of(new UnfilledReason());

  @Test
  void asksForAReason() {
    unfilledReason.check("""
        formula syrup
          accept unused-stage
          ^^^^^^^^^^^^^^^^^^^ unfilled-reason: `unused-stage` is accepted without a reason
          accept unused-stage ""
                              ^^ unfilled-reason: `unused-stage` is accepted without a reason
          accept unused-stage "  "
                              ^^^^ unfilled-reason: `unused-stage` is accepted without a reason
        """);
  }

  @Test
  void takesThePlaceholderForNoReason() {
    unfilledReason.check("""
        formula syrup
          accept unused-stage "reason"
                              ^^^^^^^^ unfilled-reason: `unused-stage` is accepted without a reason
        """);
  }

  @Test
  void isContentWithAnyOtherWords() {
    unfilledReason.check("""
        formula syrup
          accept unused-stage "the reason is that it is kept"
        """);
  }
}
