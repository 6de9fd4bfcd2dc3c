package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnreadableTextTest {

  private final RuleFixture unreadableText = RuleFixture.of(new UnreadableText());

  @Test
  void tellsOfAWordThatNoFormulaKnows() {
    unreadableText.check("""
        formula syrup
          textur soft
          ^^^^^^ unreadable-text: `textur` is no fact of a formula; did you mean `texture`?
        stage pan
          60.00 % white-sugar
        """);
  }

  @Test
  void tellsOfAnOpenQuote() {
    unreadableText.check("""
        formula syrup
          note "keep it dry
               ^^^^^^^^^^^^ unreadable-text: the quote is not closed; it ends with `"` on the same line
        stage pan
          60.00 % white-sugar
        """);
  }

  @Test
  void staysQuietOnRemarks() {
    unreadableText.check("""
        formula syrup # a plain one
          note "keep it dry"
        stage pan
          # weigh twice
          60.00 % white-sugar
        """);
  }
}
