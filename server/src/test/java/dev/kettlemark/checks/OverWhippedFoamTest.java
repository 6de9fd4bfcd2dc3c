package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class OverWhippedFoamTest {

  private final RuleFixture overWhippedFoam = RuleFixture.of(new OverWhippedFoam());

  @Test
  void marksEggWhiteThatIsWhippedOnAndOn() {
    overWhippedFoam.check("""
        formula foam
        stage foam
          30 %    egg-white-pasteurised
          6 %     caster-sugar
          whip    on high for 12 min until stiff-peak
          ^^^^ over-whipped-foam: `egg-white-pasteurised` is whipped on high for 12 min, up to stiff peak
        """);
  }

  @Test
  void allowsTheLimit() {
    overWhippedFoam.check("""
        formula foam
        stage foam
          30 %    egg-white-pasteurised
          6 %     caster-sugar
          whip    on high for 10 min until stiff-peak
        """);
  }

  @Test
  void allowsSoftPeak() {
    overWhippedFoam.check("""
        formula foam
        stage foam
          30 %    egg-white-pasteurised
          6 %     caster-sugar
          whip    on high for 12 min until soft-peak
        """);
  }

  @Test
  void allowsAProteinThatStandsIt() {
    overWhippedFoam.check("""
        formula foam
        stage foam
          30 %    aquafaba
          6 %     caster-sugar
          whip    on high for 12 min until stiff-peak
        """);
  }

  @Test
  void knowsThatSugarProtects() {
    overWhippedFoam.check("""
        formula foam
        stage foam
          30 %    egg-white-pasteurised
          60 %     caster-sugar
          whip    on high for 12 min until stiff-peak
        """);
  }

  @Test
  void stopsAtSoftPeak() {
    overWhippedFoam.checkFix("Whip it until soft-peak only", """
        formula foam
        stage foam
          30 %    egg-white-pasteurised
          6 %     caster-sugar
          whip    on high for 12 min until stiff-peak
        """, """
        formula foam
        stage foam
          30 %    egg-white-pasteurised
          6 %     caster-sugar
          whip    on high for 12 min until soft-peak
        """);
  }

  @Test
  void whipsSlower() {
    overWhippedFoam.checkFix("Whip it on medium", """
        formula foam
        stage foam
          30 %    egg-white-pasteurised
          6 %     caster-sugar
          whip    on high for 12 min until stiff-peak
        """, """
        formula foam
        stage foam
          30 %    egg-white-pasteurised
          6 %     caster-sugar
          whip    on medium for 12 min until stiff-peak
        """);
  }
}
