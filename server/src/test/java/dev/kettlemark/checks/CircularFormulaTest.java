package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class CircularFormulaTest {

  private final RuleFixture circularFormula = RuleFixture.of(new CircularFormula());

  @Test
  void showsTheWayRound() {
    circularFormula.check("""
        formula filling
        stage one
          70 %    almond-paste
          30 %    binder
                  ^^^^^^ circular-formula: `filling` is made of itself: filling → binder → filling

        formula binder
        stage one
          90 %    honey
          10 %    filling
                  ^^^^^^^ circular-formula: `binder` is made of itself: binder → filling → binder
        """);
  }

  @Test
  void marksAFormulaThatUsesItself() {
    circularFormula.check("""
        formula filling
        stage one
          70 %    almond-paste
          30 %    filling
                  ^^^^^^^ circular-formula: `filling` is made of itself: filling → filling
        """);
  }

  @Test
  void followsVariants() {
    circularFormula.check("""
        formula filling
        stage one
          30 %    light
                  ^^^^^ circular-formula: `filling` is made of itself: filling → light → filling

        variant light of filling
                         ^^^^^^^ circular-formula: `light` is made of itself: light → filling → light
        """);
  }

  @Test
  void allowsAFormulaUsedTwice() {
    circularFormula.check("""
        formula filling
        stage one
          30 %    binder
          70 %    outer

        formula outer
        stage one
          100 %   binder

        formula binder
        stage one
          100 %   honey
        """);
  }
}
