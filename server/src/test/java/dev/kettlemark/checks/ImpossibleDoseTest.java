package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ImpossibleDoseTest {

  private final RuleFixture impossibleDose = RuleFixture.of(new ImpossibleDose());

  @Test
  void marksMoreThanTheWhole() {
    impossibleDose.check("""
        formula paste
          batch 1000 g
        stage pan
          120 %  icing-sugar
          ^^^^^ impossible-dose: 120 % of `icing-sugar`, 1200.0 g in this batch, is more than the whole
          q.s.   water
        """);
  }

  @Test
  void marksPercentForPartsPerMillion() {
    impossibleDose.check("""
        ingredient beet-red
          role colour
          form powder
          use 0.01-0.05 % of charge
        formula paste
        stage pan
          25 %   beet-red
          ^^^^ impossible-dose: 25 % of `beet-red`, is many times the usual 0.01–0.05 %
          q.s.   water
        """);
  }

  @Test
  void leavesAHighDoseAlone() {
    impossibleDose.check("""
        ingredient beet-red
          role colour
          form powder
          use 0.1-0.5 % of charge
        formula paste
        stage pan
          25.00 % beet-red
          q.s.   water
        """);
  }

  @Test
  void leavesTheWholeAlone() {
    impossibleDose.check("""
        formula paste
        stage pan
          100 % icing-sugar
        """);
  }

  @Test
  void leavesOtherBasesAlone() {
    impossibleDose.check("""
        formula paste
          percent of white-sugar
        stage pan
          100 % white-sugar
          150 % water
        """);
  }

  @Test
  void movesThePointOfASubFormula() {
    impossibleDose.checkFix("Write `12.00 %`", """
        formula mix
        stage pan
          100 % icing-sugar
        formula paste
        stage pan
          120 % mix
          q.s.   water
        """, """
        formula mix
        stage pan
          100 % icing-sugar
        formula paste
        stage pan
          12.00 % mix
          q.s.   water
        """);
  }

  @Test
  void writesPartsPerMillion() {
    impossibleDose.checkFix("Write `250 ppm`", """
        ingredient beet-red
          role colour
          form powder
          use 0.01-0.05 % of charge
        formula paste
        stage pan
          250 %  beet-red
          q.s.   water
        """, """
        ingredient beet-red
          role colour
          form powder
          use 0.01-0.05 % of charge
        formula paste
        stage pan
          250 ppm  beet-red
          q.s.   water
        """);
  }

  @Test
  void writesThemAsPercent() {
    impossibleDose.checkFix("Write `0.025 %`", """
        ingredient beet-red
          role colour
          form powder
          use 0.01-0.05 % of charge
        formula paste
        stage pan
          250 %  beet-red
          q.s.   water
        """, """
        ingredient beet-red
          role colour
          form powder
          use 0.01-0.05 % of charge
        formula paste
        stage pan
          0.025 %  beet-red
          q.s.   water
        """);
  }
}
