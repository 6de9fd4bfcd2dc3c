package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class AmbiguousOunceTest {

  private final RuleFixture ambiguousOunce = RuleFixture.of(new AmbiguousOunce());

  /** By hand, NIST SP 811: 8 · 28.3495 g = 226.8 g; 8 · 29.5735 mL at the pantry's 1.00 g/mL. */
  @Test
  void marksOuncesOfALiquid() {
    ambiguousOunce.check("""
        formula tea
        stage pan
          8 oz honey
          ^^^^ ambiguous-ounce: 8 oz of `honey`: of weight it is 226.8 g, of volume 339.0 g
          8 oz white-sugar
          8 fl-oz water
        """);
  }

  @Test
  void leavesGramsAlone() {
    ambiguousOunce.check("""
        formula tea
        stage pan
          226.8 g honey
        """);
  }

  @Test
  void writesGrams() {
    ambiguousOunce.checkFix("Write `226.8 g`, if it was ounces of weight", """
        formula tea
        stage pan
          8 oz honey
        """, """
        formula tea
        stage pan
          226.8 g honey
        """);
  }

  @Test
  void writesTheGramsOfAVolume() {
    ambiguousOunce.checkFix("Write `339.0 g`, if it was fluid ounces", """
        formula tea
        stage pan
          8 oz honey
        """, """
        formula tea
        stage pan
          339.0 g honey
        """);
  }
}
