package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class BrokenCountTest {

  private final RuleFixture brokenCount = RuleFixture.of(new BrokenCount());

  @Test
  void marksWhatACalculatorLeft() {
    brokenCount.check("""
        formula milk-base
        stage pan
          500 g milk
          1.57 each vanilla-pod
          ^^^^^^^^^ broken-count: 1.57 each of `vanilla-pod` cannot be counted out
          0.8 each egg-yolk
          ^^^^^^^^ broken-count: 0.8 each of `egg-yolk` cannot be counted out
        """);
  }

  @Test
  void leavesHalvesAndQuartersAlone() {
    brokenCount.check("""
        formula milk-base
        stage pan
          0.5 each vanilla-pod
          1.25 each vanilla-pod
          3 each egg-yolk
        """);
  }

  @Test
  void cutsNoEgg() {
    brokenCount.check("""
        formula milk-base
        stage pan
          1.5 each egg-yolk
          ^^^^^^^^ broken-count: 1.5 each of `egg-yolk` cannot be counted out
        """);
  }

  @Test
  void rounds() {
    brokenCount.checkFix("Write `2 each`", """
        formula milk-base
        stage pan
          1.57 each vanilla-pod
        """, """
        formula milk-base
        stage pan
          2 each    vanilla-pod
        """);
  }

  @Test
  void neverRoundsToNothing() {
    brokenCount.checkFix("Write `1 each`", """
        formula milk-base
        stage pan
          0.3 each vanilla-pod
        """, """
        formula milk-base
        stage pan
          1 each   vanilla-pod
        """);
  }
}
