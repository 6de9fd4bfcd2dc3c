package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class FatInFoamTest {

  private final RuleFixture fatInFoam = RuleFixture.of(new FatInFoam());

  @Test
  void marksCocoaAmongEggWhite() {
    fatInFoam.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          2 %    cocoa-powder
                 ^^^^^^^^^^^^ fat-in-foam: `cocoa-powder` brings fat into a foam, 0.86 % of it in all
          mix     all
          whip    until soft-peak
        stage body
          all of  foam
          fold    foam
        """);
  }

  @Test
  void marksATraceOfYolk() {
    fatInFoam.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          0.05 % egg-yolk
                 ^^^^^^^^ fat-in-foam: `egg-yolk` brings fat into a foam, 0.044 % of it in all
          mix     all
          whip    until soft-peak
        stage body
          all of  foam
          fold    foam
        """);
  }

  @Test
  void staysSilentBelowTheLimit() {
    fatInFoam.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          0.03 % egg-yolk
          mix     all
          whip    until soft-peak
        stage body
          all of  foam
          fold    foam
        """);
  }

  @Test
  void leavesTheFatOfTheFoamingProteinItselfAlone() {
    fatInFoam.check("""
        formula pea-foam
        stage foam
          10 %    pea-protein-isolate
          90 %    water
          whip    until soft-peak
        """);
  }

  @Test
  void takesFatAtFirmPeak() {
    fatInFoam.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          2 %     cocoa-powder
          whip    egg-white-pasteurised until firm-peak
          fold    cocoa-powder into egg-white-pasteurised
          whip    for 10 s
        """);
  }

  @Test
  void leavesAFoamOfYolkAlone() {
    fatInFoam.check("""
        formula sponge
        stage foam
          30 %    egg-white-pasteurised
          15 %    egg-yolk
          whip    until ribbon
        """);
  }

  @Test
  void looksThroughTheStages() {
    fatInFoam.check("""
        formula meringue
        stage yolky
          30 %    egg-white-pasteurised
          1 %     egg-yolk
                  ^^^^^^^^ fat-in-foam: `egg-yolk` brings fat into a foam, 0.86 % of it in all
          mix     all
        stage foam
          all of  yolky
          whip    until soft-peak
        """);
  }

  @Test
  void isMilderForATrace() {
    fatInFoam.checkSeverity(Severity.WARNING, """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          0.05 % egg-yolk
          mix     all
          whip    until soft-peak
        stage body
          all of  foam
          fold    foam
        """);
  }

  @Test
  void isGraveForMore() {
    fatInFoam.checkSeverity(Severity.ERROR, """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          2 %    cocoa-powder
          mix     all
          whip    until soft-peak
        stage body
          all of  foam
          fold    foam
        """);
  }

  @Test
  void isMilderAtSoftPeak() {
    fatInFoam.checkSeverity(Severity.WARNING, """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          2 %     cocoa-powder
          whip    egg-white-pasteurised until soft-peak
          fold    cocoa-powder into egg-white-pasteurised
          whip    for 2 min
        """);
  }

  @Test
  void foldsItInLater() {
    fatInFoam.checkFix("Add it in `body` instead", """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          2 %     cocoa-powder
          mix     egg-white-pasteurised, cocoa-powder
          whip    until soft-peak
        stage body
          10 %    caster-sugar
          all of  foam
          fold    caster-sugar into foam
          deposit foam
        """, """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          mix     egg-white-pasteurised
          whip    until soft-peak
        stage body
          10 %    caster-sugar
          2 %     cocoa-powder
          all of  foam
          fold    caster-sugar into foam
          fold      cocoa-powder into foam
          deposit foam
        """);
  }

  @Test
  void leavesACelluloseThatWhipsAlone() {
    fatInFoam.check("""
        formula topping
        stage foam
          1 %     hpmc
          20 %    coconut-oil
          60 %    water
          whip    until soft-peak
        """);
  }
}
