package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class StageBeforeMadeTest {

  private final RuleFixture stageBeforeMade = RuleFixture.of(new StageBeforeMade());

  @Test
  void marksATakeOfWhatIsMadeBelow() {
    stageBeforeMade.check("""
        formula brittle
        stage body
          30.00 % roasted-almond
          all of  syrup
                  ^^^^^ stage-before-made: `syrup` is taken in `body`, but made further down
        stage syrup
          70.00 % white-sugar
        """);
  }

  @Test
  void marksAStageThatTakesItself() {
    stageBeforeMade.check("""
        formula brittle
        stage body
          30.00 % roasted-almond
          all of  body
                  ^^^^ stage-before-made: `body` takes itself
        """);
  }

  @Test
  void staysQuietInTheOrderOfWork() {
    stageBeforeMade.check("""
        formula brittle
        stage syrup
          70.00 % white-sugar
        stage body
          30.00 % roasted-almond
          all of  syrup
        """);
  }

  @Test
  void placesWhatAVariantInheritsAtItsParentsName() {
    stageBeforeMade.check("""
        formula brittle
        stage body
          30.00 % roasted-almond
          all of  syrup
                  ^^^^^ stage-before-made: `syrup` is taken in `body`, but made further down
        stage syrup
          70.00 % white-sugar

        variant hazelnut of brittle
                            ^^^^^^^ stage-before-made: `syrup` is taken in `body`, but made further down
          replace roasted-almond by 30.00 % roasted-hazelnut
        """);
  }

  @Test
  void movesTheStageUpWithItsComment() {
    stageBeforeMade.checkFix("Move stage `syrup` up", """
        formula brittle
          batch   1000 g

        # The nuts stand ready.
        stage body
          30.00 % roasted-almond
          all of  syrup
          fold    roasted-almond into syrup

        # Golden, not brown.
        stage syrup
          70.00 % white-sugar
          cook    to 152 °C

        # What follows belongs to the next section.
        formula other
        """, """
        formula brittle
          batch   1000 g

        # Golden, not brown.
        stage syrup
          70.00 % white-sugar
          cook    to 152 °C

        # The nuts stand ready.
        stage body
          30.00 % roasted-almond
          all of  syrup
          fold    roasted-almond into syrup

        # What follows belongs to the next section.
        formula other
        """);
  }

  @Test
  void movesAStageFromBetweenOthers() {
    stageBeforeMade.checkFix("Move stage `syrup` up", """
        formula brittle
        stage body
          30.00 % roasted-almond
          all of  syrup
        stage syrup
          70.00 % white-sugar
        stage slab
          all of  body
        """, """
        formula brittle
        stage syrup
          70.00 % white-sugar
        stage body
          30.00 % roasted-almond
          all of  syrup
        stage slab
          all of  body
        """);
  }
}
