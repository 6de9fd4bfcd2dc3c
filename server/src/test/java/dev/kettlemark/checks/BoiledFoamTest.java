package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class BoiledFoamTest {

  private final RuleFixture boiledFoam = RuleFixture.of(new BoiledFoam());

  @Test
  void marksABareCookBesideAFoam() {
    boiledFoam.check("""
        formula meringue
        stage pan
          30 %    egg-white-pasteurised
          50 %    white-sugar
          20 %    water
          whip    egg-white-pasteurised until soft-peak
          cook    to 119 °C
          ^^^^ boiled-foam: `cook` boils what is whipped already
        """);
  }

  @Test
  void marksAFoamWarmedToTheBoil() {
    boiledFoam.check("""
        formula meringue
        stage pan
          30 %    egg-white-pasteurised
          50 %    white-sugar
          20 %    water
          whip    egg-white-pasteurised until soft-peak
          warm    egg-white-pasteurised to 100 °C
          ^^^^ boiled-foam: `warm` boils what is whipped already
        """);
  }

  @Test
  void leavesAFoamWarmedLessAlone() {
    boiledFoam.check("""
        formula meringue
        stage pan
          30 %    egg-white-pasteurised
          50 %    white-sugar
          20 %    water
          whip    egg-white-pasteurised until soft-peak
          warm    egg-white-pasteurised to 99 °C
        """);
  }

  @Test
  void leavesACookThatNamesItsSyrupAlone() {
    boiledFoam.check("""
        formula meringue
        stage pan
          30 %    egg-white-pasteurised
          50 %    white-sugar
          20 %    water
          whip    egg-white-pasteurised until soft-peak
          cook    white-sugar, water to 119 °C
        """);
  }

  @Test
  void namesTheSyrup() {
    boiledFoam.checkFix("Boil only white-sugar, water", """
        formula meringue
        stage pan
          30 %    egg-white-pasteurised
          50 %    white-sugar
          20 %    water
          whip    egg-white-pasteurised until soft-peak
          cook    to 119 °C
        """, """
        formula meringue
        stage pan
          30 %    egg-white-pasteurised
          50 %    white-sugar
          20 %    water
          whip    egg-white-pasteurised until soft-peak
          cook white-sugar, water    to 119 °C
        """);
  }

  @Test
  void offersNothingWhereOnlyFoamIsThere() {
    boiledFoam.checkNoFix("""
        formula meringue
        stage pan
          30 %    egg-white-pasteurised
          whip    until soft-peak
          boil    for 2 min
        """);
  }

  @Test
  void leavesACustardAlone() {
    boiledFoam.check("""
        formula custard
        stage pan
          20 %    egg-yolk
          20 %    caster-sugar
          60 %    milk
          whip    egg-yolk, caster-sugar until ribbon
          pour    milk into egg-yolk
          boil    for 1 min
        """);
  }
}
