package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** 28 % of 250 g is 70 g. */
class WhiskOutOfReachTest {

  private final RuleFixture whiskOutOfReach = RuleFixture.of(new WhiskOutOfReach());

  @Test
  void marksTheMistake() {
    whiskOutOfReach.check("""
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
          batch 250 g
          caution hot-sugar
        stage foam in stand-mixer
          28.00 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          ^^^^ whisk-out-of-reach: 70.0 g is in `stand-mixer`, which whips from 90.0 g
          sprinkle caster-sugar into egg-white-pasteurised while whisking on medium
          whip on medium until soft-peak
        stage syrup
          50.00 % white-sugar
          q.s. water
          boil under lid for 3 min until dissolved
          cook to 119 °C
        stage meringue in stand-mixer
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    whiskOutOfReach.check("""
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
          batch 350 g
          caution hot-sugar
        stage foam in stand-mixer
          28.00 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          sprinkle caster-sugar into egg-white-pasteurised while whisking on medium
          whip on medium until soft-peak
        stage syrup
          50.00 % white-sugar
          q.s. water
          boil under lid for 3 min until dissolved
          cook to 119 °C
        stage meringue in stand-mixer
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void isContentAtTheLeast() {
    whiskOutOfReach.check("""
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
          batch 322 g
          caution hot-sugar
        stage foam in stand-mixer
          28.00 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          sprinkle caster-sugar into egg-white-pasteurised while whisking on medium
          whip on medium until soft-peak
        stage syrup
          50.00 % white-sugar
          q.s. water
          boil under lid for 3 min until dissolved
          cook to 119 °C
        stage meringue in stand-mixer
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void mendsIt() {
    whiskOutOfReach.checkFix("Set the batch to 322 g", """
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
          batch 250 g
          caution hot-sugar
        stage foam in stand-mixer
          28.00 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          sprinkle caster-sugar into egg-white-pasteurised while whisking on medium
          whip on medium until soft-peak
        stage syrup
          50.00 % white-sugar
          q.s. water
          boil under lid for 3 min until dissolved
          cook to 119 °C
        stage meringue in stand-mixer
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """, """
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
          batch 322 g
          caution hot-sugar
        stage foam in stand-mixer
          28.00 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          sprinkle caster-sugar into egg-white-pasteurised while whisking on medium
          whip on medium until soft-peak
        stage syrup
          50.00 % white-sugar
          q.s. water
          boil under lid for 3 min until dissolved
          cook to 119 °C
        stage meringue in stand-mixer
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }
}
