package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class EggComparisonMissingTest {

  private final RuleFixture eggComparisonMissing = RuleFixture.of(new EggComparisonMissing());

  @Test
  void marksAReleasedVariantWithoutEgg() {
    eggComparisonMissing.check("""
        formula egg-meringue
          percent   of charge
          batch     1000 g
        stage foam
          30.00 %   egg-white-pasteurised
          70.00 %   caster-sugar
          whip      on medium until soft-peak
        variant plant-meringue of egg-meringue
                                  ^^^^^^^^^^^^ egg-comparison-missing: `egg-meringue` is made with egg, and no note says how this compares
          status    released
          replace   egg-white-pasteurised by 30.00 % aquafaba
        """);
  }

  @Test
  void mendsMarksAReleasedVariantWithoutEgg() {
    eggComparisonMissing.checkFirstFix("Add a note that compares the two", """
        formula egg-meringue
          percent   of charge
          batch     1000 g
        stage foam
          30.00 %   egg-white-pasteurised
          70.00 %   caster-sugar
          whip      on medium until soft-peak
        variant plant-meringue of egg-meringue
          status    released
          replace   egg-white-pasteurised by 30.00 % aquafaba
        """, """
        formula egg-meringue
          percent   of charge
          batch     1000 g
        stage foam
          30.00 %   egg-white-pasteurised
          70.00 %   caster-sugar
          whip      on medium until soft-peak
        variant plant-meringue of egg-meringue
          status    released
          replace   egg-white-pasteurised by 30.00 % aquafaba
          note      "Beside egg-meringue with egg: moisture 28.3 %, there 26.7 %; water activity 0.79–0.83, there 0.77–0.81; density 0.27–0.48 g/mL, there 0.28–0.50 g/mL."
        """);
  }

  @Test
  void staysQuietWithAComparison() {
    eggComparisonMissing.check("""
        formula egg-meringue
          percent   of charge
          batch     1000 g
        stage foam
          30.00 %   egg-white-pasteurised
          70.00 %   caster-sugar
          whip      on medium until soft-peak
        variant plant-meringue of egg-meringue
          status    released
          note      "Weeps sooner than with egg."
          replace   egg-white-pasteurised by 30.00 % aquafaba
        """);
  }

  @Test
  void leavesOneAtTheBenchAlone() {
    eggComparisonMissing.check("""
        formula egg-meringue
          percent   of charge
          batch     1000 g
        stage foam
          30.00 %   egg-white-pasteurised
          70.00 %   caster-sugar
          whip      on medium until soft-peak
        variant plant-meringue of egg-meringue
          status    bench
          replace   egg-white-pasteurised by 30.00 % aquafaba
        """);
  }

  @Test
  void leavesAVariantWithEggAlone() {
    eggComparisonMissing.check("""
        formula egg-meringue
          percent   of charge
          batch     1000 g
        stage foam
          30.00 %   egg-white-pasteurised
          70.00 %   caster-sugar
          whip      on medium until soft-peak
        variant plant-meringue of egg-meringue
          status    released
          change    31.00 % egg-white-pasteurised
        """);
  }
}
