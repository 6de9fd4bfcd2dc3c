package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Definition of overrun: 1.31 / 0.40 − 1 = 2.28. */
class OverrunAgainstDensityTest {

  private final RuleFixture overrunAgainstDensity = RuleFixture.of(new OverrunAgainstDensity());

  @Test
  void marksTheMistake() {
    overrunAgainstDensity.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
          expect density 0.40 g/mL
          expect overrun 325 %
                         ^^^^^ overrun-against-density: 1.31 g/mL without air and 0.40 g/mL with it are an overrun of 228 %
          caution hot-sugar
        stage foam
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
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    overrunAgainstDensity.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
          expect density 0.40 g/mL
          expect overrun 225 %
          caution hot-sugar
        stage foam
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
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void allowsWhatACupCanShow() {
    overrunAgainstDensity.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
          expect density 0.40 g/mL
          expect overrun 240 %
          caution hot-sugar
        stage foam
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
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }

  @Test
  void mendsIt() {
    overrunAgainstDensity.checkFix("Write `228 %`", """
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
          expect density 0.40 g/mL
          expect overrun 325 %
          caution hot-sugar
        stage foam
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
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """, """
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
          expect density 0.40 g/mL
          expect overrun 228 %
          caution hot-sugar
        stage foam
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
        stage meringue
          all of foam
          all of syrup
          stream syrup into foam over 75 s while whisking on medium
          whip on high until stiff-peak
        """);
  }
}
