package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Egg board sheet: 0.12 parts of powder and 0.88 parts of water make one part of egg white, so 1 : 7.3. */
class FoamPowderWaterTest {

  private final RuleFixture foamPowderWater = RuleFixture.of(new FoamPowderWater());

  @Test
  void marksTheMistake() {
    foamPowderWater.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          3.00 % egg-white-powder
                 ^^^^^^^^^^^^^^^^ foam-powder-water: `egg-white-powder` lies in 14.0 times its weight of water, usual is 4 to 9 times
          6.00 % caster-sugar
          37.00 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          36.00 % white-sugar
          q.s. water
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    foamPowderWater.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          3.00 % egg-white-powder
          6.00 % caster-sugar
          22.00 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          40.00 % white-sugar
          q.s. water
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void marksAPaste() {
    foamPowderWater.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          3.00 % egg-white-powder
                 ^^^^^^^^^^^^^^^^ foam-powder-water: `egg-white-powder` lies in 3.1 times its weight of water, usual is 4 to 9 times
          6.00 % caster-sugar
          9.00 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          36.00 % white-sugar
          q.s. water
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void allowsOneToNine() {
    foamPowderWater.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          3.00 % egg-white-powder
                 ^^^^^^^^^^^^^^^^ foam-powder-water: `egg-white-powder` lies in 9.1 times its weight of water, usual is 4 to 9 times
          6.00 % caster-sugar
          26.90 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          36.00 % white-sugar
          q.s. water
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void leavesAPowderBesideFreshWhiteAlone() {
    foamPowderWater.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          3.00 % egg-white-powder
          6.00 % caster-sugar
          8.00 % egg-white-pasteurised
          29.00 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          36.00 % white-sugar
          q.s. water
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void mendsIt() {
    foamPowderWater.checkFix("Take 18 % of water", """
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          3.00 % egg-white-powder
          6.00 % caster-sugar
          37.00 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          36.00 % white-sugar
          q.s. water
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """, """
        formula cooked-meringue
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage foam
          3.00 % egg-white-powder
          6.00 % caster-sugar
          18 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          36.00 % white-sugar
          q.s. water
          cook to 119 °C
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }
}
