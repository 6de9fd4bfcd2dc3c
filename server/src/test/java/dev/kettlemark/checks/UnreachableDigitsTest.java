package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnreachableDigitsTest {

  private final RuleFixture unreachableDigits = RuleFixture.of(new UnreachableDigits());

  /** By hand: 0.0001 % of 2000 g is 0.002 g. */
  @Test
  void marksDigitsBelowAStep() {
    unreachableDigits.check("""
        house small
          scale bench reads 1 g to 6000 g
          scale fine reads 0.01 g to 200 g
        formula paste
          batch 2000 g
        stage pan
          36.0004 % water
          ^^^^^^^^^ unreachable-digits: the last digit of 36.0004 % of `water` is 0.002 g, and scale `bench` reads 1 g
          q.s.      icing-sugar
        """);
  }

  @Test
  void leavesHundredthsAndWhatAFineScaleShows() {
    unreachableDigits.check("""
        house small
          scale bench reads 1 g to 6000 g
          scale fine reads 0.01 g to 200 g
        formula paste
          batch 2000 g
        stage pan
          36.01 % water
          0.125 % xanthan-gum
          36.0000 % white-sugar
          q.s.    icing-sugar
        """);
  }

  @Test
  void saysNothingWithoutScales() {
    unreachableDigits.check("""
        formula paste
          batch 2000 g
        stage pan
          36.0004 % water
          q.s.      icing-sugar
        """);
  }

  @Test
  void rounds() {
    unreachableDigits.checkFix("Round to `36.00 %`", """
        house small
          scale bench reads 1 g to 6000 g
          scale fine reads 0.01 g to 200 g
        formula paste
          batch 2000 g
        stage pan
          36.0004 % water
          q.s.      icing-sugar
        """, """
        house small
          scale bench reads 1 g to 6000 g
          scale fine reads 0.01 g to 200 g
        formula paste
          batch 2000 g
        stage pan
          36.00 % water
          q.s.      icing-sugar
        """);
  }
}
