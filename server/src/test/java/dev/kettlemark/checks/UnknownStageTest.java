package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnknownStageTest {

  private final RuleFixture unknownStage = RuleFixture.of(new UnknownStage());

  @Test
  void marksATakeOfNoStage() {
    unknownStage.check("""
        formula caramel
        stage base
          100 %   condensed-milk
        stage body
          all of  bsae
                  ^^^^ unknown-stage: the formula has no stage `bsae`; did you mean `base`?
        """);
  }

  @Test
  void leavesATakeInTheWrongOrderToItsOwnRule() {
    unknownStage.check("""
        formula caramel
        stage body
          all of  base
        stage base
          100 %   condensed-milk
        """);
  }

  @Test
  void knowsTheStagesThatAVariantInherits() {
    unknownStage.check("""
        formula caramel
        stage base
          100 %   condensed-milk

        variant salted of caramel
        stage body
          all of  base
          part 1/2 of froth
                      ^^^^^ unknown-stage: the formula has no stage `froth`
        """);
  }

  @Test
  void writesTheNearestStage() {
    unknownStage.checkFix("Write `base`", """
        formula caramel
        stage base
          100 %   condensed-milk
        stage body
          all of  bsae
        """, """
        formula caramel
        stage base
          100 %   condensed-milk
        stage body
          all of  base
        """);
  }
}
