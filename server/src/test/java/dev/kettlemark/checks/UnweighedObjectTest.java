package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnweighedObjectTest {

  private final RuleFixture unweighedObject = RuleFixture.of(new UnweighedObject());

  @Test
  void marksWhatIsNeitherWeighedNorTaken() {
    unweighedObject.check("""
        formula filling
        stage paste
          60.00 % hazelnut-paste
          40.00 % icing-sugar
          mix     hazelnut-paste, icing-sugar
          fold    almond-flour
                  ^^^^^^^^^^^^ unweighed-object: `almond-flour` is neither weighed in `paste` nor taken from an earlier stage
        """);
  }

  @Test
  void knowsMassesStagesAndBases() {
    unweighedObject.check("""
        formula filling
          basis   liquid = water, honey
        stage base
          50.00 % water
          50.00 % honey
          warm    liquid to 40 °C
          mix     base
        stage body
          all of  base
          whip    base on high
        stage end
          all of  body
          mix     base
        """);
  }

  @Test
  void leavesToolsAlone() {
    unweighedObject.check("""
        house small
          bowl    planetary-5 holds 5 L
        formula filling
        stage body in copper-pan
          100 %   honey
          warm    planetary-5 to 40 °C
          warm    copper-pan, bowl to 40 °C
          warm    honey to 40 °C
        """);
  }

  @Test
  void leavesWhatIsShapedOrCheckedAlone() {
    unweighedObject.check("""
        formula filling
        stage body
          100 %   honey
          warm    honey to 40 °C
          deposit mass into half-sphere between wafer-paper
          cut     pieces
          check   brix
          keep    whisking until deposit
          never   stir
        """);
  }

  @Test
  void marksAStageThatIsMadeFurtherDown() {
    unweighedObject.check("""
        formula filling
        stage body
          50.00 % almond-paste
          fold    syrup
                  ^^^^^ unweighed-object: `syrup` is neither weighed in `body` nor taken from an earlier stage
          mix     almond-paste
        stage syrup
          50.00 % honey
          cook    honey to 120 °C
        """);
  }

  @Test
  void followsTheChangesOfAVariant() {
    unweighedObject.check("""
        formula filling
        stage paste
          60.00 % hazelnut-paste
          40.00 % icing-sugar
          mix     hazelnut-paste, icing-sugar

        variant almond of filling
          replace hazelnut-paste by 60.00 % almond-paste
        """);
  }

  @Test
  void marksAStepThatAVariantWritesAnew() {
    unweighedObject.check("""
        formula filling
        stage paste
          60.00 % hazelnut-paste
          40.00 % icing-sugar
          mix     hazelnut-paste, icing-sugar

        variant almond of filling
          replace hazelnut-paste by 60.00 % almond-paste
        stage paste again
          mix     hazelnut-paste, icing-sugar
                  ^^^^^^^^^^^^^^ unweighed-object: `hazelnut-paste` is neither weighed in `paste` nor taken from an earlier stage
        """);
  }

  @Test
  void writesTheNearestThingThatIsWeighed() {
    unweighedObject.checkFix("Write `hazelnut-flour`", """
        formula base
        stage base
          60.00 % hazelnut-flour
          40.00 % icing-sugar
          blend   hazelnut-flower, icing-sugar
        """, """
        formula base
        stage base
          60.00 % hazelnut-flour
          40.00 % icing-sugar
          blend   hazelnut-flour, icing-sugar
        """);
  }

  @Test
  void weighsItInWithNothingYet() {
    unweighedObject.checkFix("Weigh in `almond-flour`, its amount to be filled in", """
        formula filling
        stage paste
          100.00 % hazelnut-paste
          fold     almond-flour
        """, """
        formula filling
        stage paste
          100.00 % hazelnut-paste
          0.00 %              almond-flour
          fold     almond-flour
        """);
  }

  @Test
  void weighsItInByWeightWhereTheFormulaGoesByWeight() {
    unweighedObject.checkFix("Weigh in `almond-flour`, its amount to be filled in", """
        formula filling
        stage paste
          500 g hazelnut-paste
          fold  almond-flour
        """, """
        formula filling
        stage paste
          500 g hazelnut-paste
          0 g                 almond-flour
          fold  almond-flour
        """);
  }
}
