package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnfilledReasonTest {

  private final RuleFixture unfilledReason = RuleFixture.of(new UnfilledReason());

  @Test
  void asksForAReason() {
    unfilledReason.check("""
        formula syrup
          accept unused-stage
          ^^^^^^^^^^^^^^^^^^^ unfilled-reason: why is `unused-stage` accepted
          accept unused-stage ""
                              ^^ unfilled-reason: why is `unused-stage` accepted
          accept unused-stage "  "
                              ^^^^ unfilled-reason: why is `unused-stage` accepted
        """);
  }

  @Test
  void takesThePlaceholderForNoReason() {
    unfilledReason.check("""
        formula syrup
          accept unused-stage "reason"
                              ^^^^^^^^ unfilled-reason: why is `unused-stage` accepted
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
