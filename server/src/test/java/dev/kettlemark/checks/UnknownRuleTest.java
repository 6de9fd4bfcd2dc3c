package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnknownRuleTest {

  private final RuleFixture unknownRule = RuleFixture.of(new UnknownRule());

  @Test
  void proposesTheNearestRule() {
    String text = """
        formula syrup
          accept unused-stages "kept"
        """;
    unknownRule.check("""
        formula syrup
          accept unused-stages "kept"
                 ^^^^^^^^^^^^^ unknown-rule: there is no rule `unused-stages`; did you mean `unused-stage`?
        """);
    unknownRule.checkFix(
        "Write `unused-stage`", text, text.replace("unused-stages", "unused-stage"));
  }

  @Test
  void looksIntoStagesAndProducts() {
    unknownRule.check("""
        formula syrup
        stage pan
          accept no-such "kept"
                 ^^^^^^^ unknown-rule: there is no rule `no-such`
        product bar
          accept no-such "kept"
                 ^^^^^^^ unknown-rule: there is no rule `no-such`
        """);
  }

  @Test
  void refusesWhatNobodyCouldWant() {
    unknownRule.check("""
        formula syrup
          accept unreadable-text "kept"
                 ^^^^^^^^^^^^^^^ unknown-rule: `unreadable-text` cannot be accepted
        """);
  }

  @Test
  void leavesKnownRulesAlone() {
    unknownRule.check("""
        formula syrup
          accept unused-stage "kept"
        """);
  }
}
