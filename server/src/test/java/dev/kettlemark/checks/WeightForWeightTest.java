package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Solids by USDA SR26: pasteurised white (food 01172) 11 %; 1 : 8.5 to a powder of 94 %. */
class WeightForWeightTest {

  private final RuleFixture weightForWeight = RuleFixture.of(new WeightForWeight());

  @Test
  void marksTheMistake() {
    weightForWeight.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          13.40 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          sprinkle caster-sugar into egg-white-pasteurised while whisking on medium
          whip on medium until soft-peak
        stage syrup
          60.00 % white-sugar
          20.60 % water
          boil under lid for 3 min until dissolved
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak

        variant plant-meringue of cooked-meringue
          replace egg-white-pasteurised by 13.40 % soy-whipping-protein
                                           ^^^^^^^ weight-for-weight: `soy-whipping-protein` takes the place of the same weight of `egg-white-pasteurised`, with 8.5 times its dry matter
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    weightForWeight.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          13.40 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          sprinkle caster-sugar into egg-white-pasteurised while whisking on medium
          whip on medium until soft-peak
        stage syrup
          60.00 % white-sugar
          20.60 % water
          boil under lid for 3 min until dissolved
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak

        variant plant-meringue of cooked-meringue
          replace egg-white-pasteurised by 1.20 % soy-whipping-protein
          add 12.20 % water in foam
        """);
  }

  @Test
  void allowsAnotherGradeOfTheSame() {
    weightForWeight.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          13.40 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          sprinkle caster-sugar into egg-white-pasteurised while whisking on medium
          whip on medium until soft-peak
        stage syrup
          60.00 % white-sugar
          20.60 % water
          boil under lid for 3 min until dissolved
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak

        variant plant-meringue of cooked-meringue
          replace egg-white-pasteurised by 13.40 % egg-white
        """);
  }

  @Test
  void mendsIt() {
    weightForWeight.checkFix("Take 1.2 %, and water for the rest", """
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          13.40 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          sprinkle caster-sugar into egg-white-pasteurised while whisking on medium
          whip on medium until soft-peak
        stage syrup
          60.00 % white-sugar
          20.60 % water
          boil under lid for 3 min until dissolved
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak

        variant plant-meringue of cooked-meringue
          replace egg-white-pasteurised by 13.40 % soy-whipping-protein
        """, """
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          13.40 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          sprinkle caster-sugar into egg-white-pasteurised while whisking on medium
          whip on medium until soft-peak
        stage syrup
          60.00 % white-sugar
          20.60 % water
          boil under lid for 3 min until dissolved
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak

        variant plant-meringue of cooked-meringue
          replace egg-white-pasteurised by 1.2 % soy-whipping-protein
          add       12.2 %  water in foam
        """);
  }
}
