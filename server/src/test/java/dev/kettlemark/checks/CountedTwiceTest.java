package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class CountedTwiceTest {

  private final RuleFixture countedTwice = RuleFixture.of(new CountedTwice());

  /** By hand: 4 % of a mix with 5 % is 0.2 %. */
  @Test
  void marksADoseThatTheMixBrings() {
    countedTwice.check("""
        formula mix
        stage pan
          5 % citric-acid
          95 % caster-sugar
        formula drops
        stage pan
          4.00 % mix
          0.20 % citric-acid
                 ^^^^^^^^^^^ counted-twice: 0.20 % of `citric-acid` is listed, and `mix` brings as much already
          q.s. white-sugar
        """);
  }

  @Test
  void marksAllPartsListedAgain() {
    countedTwice.check("""
        formula mix
        stage pan
          5 % citric-acid
          95 % caster-sugar
        formula drops
        stage pan
          4.00 % mix
          0.20 % citric-acid
                 ^^^^^^^^^^^ counted-twice: 0.20 % of `citric-acid` is listed, and `mix` brings as much already
          3.80 % caster-sugar
                 ^^^^^^^^^^^^ counted-twice: 3.80 % of `caster-sugar` is listed, and `mix` brings as much already
          q.s. white-sugar
        """);
  }

  @Test
  void leavesMoreOfTheSameAlone() {
    countedTwice.check("""
        formula mix
        stage pan
          5 % citric-acid
          95 % caster-sugar
        formula drops
        stage pan
          4.00 % mix
          0.50 % citric-acid
          3.80 % caster-sugar
          q.s. white-sugar
        """);
  }

  @Test
  void leavesAnotherStageAlone() {
    countedTwice.check("""
        formula mix
        stage pan
          5 % citric-acid
          95 % caster-sugar
        formula drops
        stage pan
          4.00 % mix
          q.s. white-sugar
        stage top
          0.20 % citric-acid
        """);
  }

  @Test
  void dropsTheLine() {
    countedTwice.checkFix("Drop `citric-acid`", """
        formula mix
        stage pan
          5 % citric-acid
          95 % caster-sugar
        formula drops
        stage pan
          4.00 % mix
          0.20 % citric-acid
          q.s. white-sugar
        """, """
        formula mix
        stage pan
          5 % citric-acid
          95 % caster-sugar
        formula drops
        stage pan
          4.00 % mix
          q.s. white-sugar
        """);
  }
}
