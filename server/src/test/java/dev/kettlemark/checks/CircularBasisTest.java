package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Solutions by hand: x = 0.02 (x + 49) gives x = 1.00; x = 0.5 y, y = 0.5 x + 20 gives x = 13.33. */
class CircularBasisTest {

  private final RuleFixture circularBasis = RuleFixture.of(new CircularBasis());

  @Test
  void tellsTheAnswerOfALineInItsOwnBasis() {
    circularBasis.check("""
        formula sauce
          basis wet = water, guar-gum
        stage sauce
          2.00 % of wet guar-gum
          ^^^^^^^^^^^^^ circular-basis: `guar-gum` is a share of `guar-gum` through `wet`, which makes 1.00 % of charge
          49.00 % water
          50.00 % caster-sugar
        """);
  }

  @Test
  void tellsTheAnswerOfTwoLinesThatHoldEachOther() {
    circularBasis.check("""
        formula sauce
          basis second-base = honey, water
        stage sauce
          50.00 % of second-base caster-sugar
          ^^^^^^^^^^^^^^^^^^^^^^ circular-basis: `caster-sugar` is a share of `honey` is a share of `caster-sugar` through `second-base` and `caster-sugar`, which makes 13.33 % of charge
          50.00 % of caster-sugar honey
          20.00 % water
        """);
  }

  @Test
  void marksAShareThatLeavesNoAnswer() {
    circularBasis.check("""
        formula sauce
          basis wet = water, guar-gum
        stage sauce
          100.00 % of wet guar-gum
          ^^^^^^^^^^^^^^^ circular-basis: `guar-gum` is a share of `guar-gum` through `wet`, and no amounts fit
          49.00 % water
        formula sauce-two
          basis wet = water, guar-gum
        stage sauce
          120.00 % of wet guar-gum
          ^^^^^^^^^^^^^^^ circular-basis: `guar-gum` is a share of `guar-gum` through `wet`, and no amounts fit
          49.00 % water
        """);
  }

  @Test
  void staysQuietAboutARestThatHangsOnABasedLine() {
    circularBasis.check("""
        formula sauce
          basis liquid = water
        stage sauce
          0.40 % of liquid guar-gum
          20.00 % caster-sugar
          q.s. water
        """);
  }

  @Test
  void staysQuietAboutTheLineThatAllOthersAreOf() {
    circularBasis.check("""
        formula syrup
          percent of white-sugar
        stage pan
          100.00 % white-sugar
          50.00 % water
        """);
  }

  @Test
  void staysQuietAboutTwoLinesThatAreTheWholeTogether() {
    circularBasis.check("""
        formula syrup
          percent of white-sugar
        stage pan
          60.00 % white-sugar
          50.00 % water
        stage late
          40.00 % white-sugar at 60 °C
        """);
  }

  @Test
  void waitsForMissingFigures() {
    circularBasis.check("""
        formula sauce
          basis wet = water, guar-gum
        stage sauce
          2.00 % of wet guar-gum
          49.00 water
        """);
  }

  @Test
  void leavesTwoRestsToAnotherRule() {
    circularBasis.check("""
        formula sauce
          basis wet = water, guar-gum
        stage sauce
          2.00 % of wet guar-gum
          q.s. water
          q.s. caster-sugar
        """);
  }

  @Test
  void writesTheSolvedValue() {
    circularBasis.checkFix("Write `1.00 % of charge`", """
        formula sauce
          basis wet = water, guar-gum
        stage sauce
          2.00 % of wet      guar-gum
          49.00 %            water
          50.00 %            caster-sugar
        """, """
        formula sauce
          basis wet = water, guar-gum
        stage sauce
          1.00 % of charge   guar-gum
          49.00 %            water
          50.00 %            caster-sugar
        """);
  }
}
