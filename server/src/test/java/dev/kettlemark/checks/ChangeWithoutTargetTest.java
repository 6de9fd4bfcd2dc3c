package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ChangeWithoutTargetTest {

  private final RuleFixture changeWithoutTarget = RuleFixture.of(new ChangeWithoutTarget());

  @Test
  void marksAReplacementOfNothing() {
    changeWithoutTarget.check("""
        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar

        variant other of filling
          replace cocoa-butter by 60 % almond-paste
                  ^^^^^^^^^^^^ change-without-target: the parent has no `cocoa-butter`
        """);
  }

  @Test
  void marksADropOrAnotherAmountOfNothing() {
    changeWithoutTarget.check("""
        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar

        variant other of filling
          drop    hazelnut-pase
                  ^^^^^^^^^^^^^ change-without-target: the parent has no `hazelnut-pase`; did you mean `hazelnut-paste`?
          change  5 % honey
                      ^^^^^ change-without-target: the parent has no `honey`
        """);
  }

  @Test
  void looksOnlyInTheStageNamed() {
    changeWithoutTarget.check("""
        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar
        stage second
          1 %     honey

        variant other of filling
          drop    honey in paste
                  ^^^^^ change-without-target: the parent has no `honey` in `paste`
        """);
  }

  @Test
  void marksAStageThatIsNotThere() {
    changeWithoutTarget.check("""
        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar

        variant other of filling
          add     1 % honey in pasta
                               ^^^^^ change-without-target: the parent has no stage `pasta`; did you mean `paste`?
        """);
  }

  @Test
  void marksWhatCannotBeWithdrawn() {
    changeWithoutTarget.check("""
        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar

        variant other of filling
          withdraw caution nuts
                           ^^^^ change-without-target: the parent has no `caution nuts`; did you mean `nut`?
          withdraw claim vegan
                   ^^^^^ change-without-target: the parent has no fact `claim`
        """);
  }

  @Test
  void marksAParentThatIsNotThere() {
    changeWithoutTarget.check("""
        variant other of fillling
                         ^^^^^^^^ change-without-target: `fillling` is described nowhere; did you mean `filling`?

        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar
        """);
  }

  @Test
  void marksAnIngredientAsParent() {
    changeWithoutTarget.check("""
        variant other of honey
                         ^^^^^ change-without-target: `honey` is an ingredient, not a formula
        """);
  }

  @Test
  void isContentWithChangesThatHit() {
    changeWithoutTarget.check("""
        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar

        variant other of filling
          replace hazelnut-paste by 60 % almond-paste
          change  38 % icing-sugar in paste
          add     2 % honey in paste
          withdraw caution nut
        """);
  }

  @Test
  void writesTheNearestLine() {
    changeWithoutTarget.checkFix("Write `hazelnut-paste`", """
        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar

        variant other of filling
          replace hazelnut-pase by 60 % almond-paste
        """, """
        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar

        variant other of filling
          replace hazelnut-paste by 60 % almond-paste
        """);
  }

  @Test
  void writesTheNearestStage() {
    changeWithoutTarget.checkFix("Write `paste`", """
        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar

        variant other of filling
          add     1 % honey in pasta
        """, """
        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar

        variant other of filling
          add     1 % honey in paste
        """);
  }

  @Test
  void writesTheNearestParent() {
    changeWithoutTarget.checkFix("Write `filling`", """
        variant other of fillling
          batch   100 g

        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar
        """, """
        variant other of filling
          batch   100 g

        formula filling
          caution nut
        stage paste
          60 %    hazelnut-paste
          40 %    icing-sugar
        """);
  }
}
