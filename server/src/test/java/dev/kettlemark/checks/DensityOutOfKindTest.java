package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Density of wet meringue 0.25–0.45 g/mL: common practice, no source. */
class DensityOutOfKindTest {

  private final RuleFixture densityOutOfKind = RuleFixture.of(new DensityOutOfKind());

  @Test
  void marksTheMistake() {
    densityOutOfKind.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
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
          check density 0.08 g/mL
                        ^^^^^^^^^ density-out-of-kind: 0.08 g/mL cannot be the density of this mass
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    densityOutOfKind.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
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
          check density 0.32-0.40 g/mL
        """);
  }

  @Test
  void allowsALittleLighterThanUsual() {
    densityOutOfKind.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
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
          check density 0.20 g/mL
        """);
  }

  @Test
  void doubtsFarFromUsual() {
    densityOutOfKind.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
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
          check density 0.15 g/mL
                        ^^^^^^^^^ density-out-of-kind: 0.15 g/mL is far from the density of such a mass
        """);
  }

  @Test
  void marksAMassDenserThanWithoutAir() {
    densityOutOfKind.check("""
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
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
          check density 1.60 g/mL
                        ^^^^^^^^^ density-out-of-kind: 1.60 g/mL cannot be the density of this mass
        """);
  }

  @Test
  void isCertainFarFromAnyFoam() {
    densityOutOfKind.checkSeverity(Severity.ERROR, """
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
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
          check density 0.08 g/mL
        """);
  }

  @Test
  void doubtsNearIt() {
    densityOutOfKind.checkSeverity(Severity.WARNING, """
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
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
          check density 0.15 g/mL
        """);
  }

  @Test
  void mendsIt() {
    densityOutOfKind.checkFix("Write `0.24–0.43 g/mL`", """
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
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
          check density 0.08 g/mL
        """, """
        formula cooked-meringue
          percent of charge
          batch 1000 g
          texture soft
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
          check density 0.24–0.43 g/mL
        """);
  }
}
