package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TotalJustOffTest {

  private final RuleFixture totalJustOff = RuleFixture.of(new TotalJustOff());

  @Test
  void marksRounding() {
    totalJustOff.check("""
        formula mix
                ^^^ total-just-off: the lines add up to 99.99 %
        stage pan
          33.33 % icing-sugar
          33.33 % white-sugar
          33.33 % caster-sugar
        """);
  }

  @Test
  void leavesTheWholeAndTheRestAlone() {
    totalJustOff.check("""
        formula mix
        stage pan
          33.33 % icing-sugar
          33.33 % white-sugar
          33.34 % caster-sugar
        formula other
        stage pan
          33.33 % icing-sugar
          33.33 % white-sugar
          q.s. caster-sugar
        """);
  }

  @Test
  void leavesALargerGapToItsRule() {
    totalJustOff.check("""
        formula mix
        stage pan
          33.33 % icing-sugar
          33.33 % white-sugar
          33.20 % caster-sugar
        """);
  }

  @Test
  void putsItOnTheLargestLine() {
    totalJustOff.checkFix("Add 0.010 % to `caster-sugar`", """
        formula mix
        stage pan
          33.30 % icing-sugar
          33.30 % white-sugar
          33.39 % caster-sugar
        """, """
        formula mix
        stage pan
          33.30 % icing-sugar
          33.30 % white-sugar
          33.40 % caster-sugar
        """);
  }
}
