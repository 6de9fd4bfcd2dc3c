package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnusedStageTest {

  private final RuleFixture unusedStage = RuleFixture.of(new UnusedStage());

  @Test
  void marksAStageThatNobodyTakes() {
    unusedStage.check("""
        formula paste
        stage syrup
              ^^^^^ unused-stage: `syrup` is made, but no other stage takes it
          40 %    white-sugar
        stage body
          60 %    almond-paste
        """);
  }

  @Test
  void leavesTheLastStageAlone() {
    unusedStage.check("""
        formula paste
        stage syrup
          40 %    white-sugar
        stage body
          60 %    almond-paste
          part 1/2 of syrup
        """);
  }

  @Test
  void leavesAStageInTheWrongOrderToItsOwnRule() {
    unusedStage.check("""
        formula paste
        stage body
          60 %    almond-paste
          all of  syrup
        stage syrup
          40 %    white-sugar
        """);
  }

  @Test
  void saysNothingOfAStageThatHoldsNothingYet() {
    unusedStage.check("""
        formula paste
        stage syrup
        stage body
          60 %    almond-paste
        """);
  }

  @Test
  void marksAStageThatAVariantLeavesOver() {
    unusedStage.check("""
        formula paste
        stage body
          60 %    almond-paste

        variant filled of paste
                          ^^^^^ unused-stage: `body` is made, but no other stage takes it
        stage syrup
          40 %    honey
        """);
  }

  @Test
  void takesItInTheNextStage() {
    unusedStage.checkFix("Take all of it in `body`", """
        formula paste
        stage syrup
          40 %    white-sugar
        stage body
          60 %    almond-paste
          mix     for 2 min
        stage slab
          all of  body
        """, """
        formula paste
        stage syrup
          40 %    white-sugar
        stage body
          60 %    almond-paste
          all of              syrup
          mix     for 2 min
        stage slab
          all of  body
        """);
  }

  @Test
  void takesItInTheLastStage() {
    unusedStage.checkFix("Take all of it in `slab`", """
        formula paste
        stage syrup
          40 %    white-sugar
        stage body
          60 %    almond-paste
        stage slab
          all of  body
        """, """
        formula paste
        stage syrup
          40 %    white-sugar
        stage body
          60 %    almond-paste
        stage slab
          all of  body
          all of              syrup
        """);
  }
}
