package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** 25 % in the charge are 28.5 % once the syrup is cooked: mass balance. */
class EarlyDensityCheckTest {

  private final RuleFixture earlyDensityCheck = RuleFixture.of(new EarlyDensityCheck());

  @Test
  void marksTheMistake() {
    earlyDensityCheck.check("""
        formula nut-foam-bar
          percent of charge
          batch 1000 g
          texture chewy
          caution hot-sugar
          caution nut
        stage foam
          1.00 % egg-white-powder
          2.00 % caster-sugar
          6.00 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          35.00 % white-sugar
          20.00 % glucose-syrup-42
          q.s. water
          boil under lid for 3 min until dissolved
          cook to 138 °C
        stage body
          25.00 % roasted-almond at 60 °C
          all of foam
          all of syrup
          stream syrup into foam over 90 s while whisking on low
          whip on high for 5 min until firm-peak
          check density 0.85-1.00 g/mL
          ^^^^^ early-density-check: the density is checked before 28.5 % of the mass goes in
          fold roasted-almond while whisking on low
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    earlyDensityCheck.check("""
        formula nut-foam-bar
          percent of charge
          batch 1000 g
          texture chewy
          caution hot-sugar
          caution nut
        stage foam
          1.00 % egg-white-powder
          2.00 % caster-sugar
          6.00 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          35.00 % white-sugar
          20.00 % glucose-syrup-42
          q.s. water
          boil under lid for 3 min until dissolved
          cook to 138 °C
        stage body
          25.00 % roasted-almond at 60 °C
          all of foam
          all of syrup
          stream syrup into foam over 90 s while whisking on low
          whip on high for 5 min until firm-peak
          fold roasted-almond while whisking on low
          check density 0.85-1.00 g/mL
        """);
  }

  @Test
  void allowsAPinchAfterwards() {
    earlyDensityCheck.check("""
        formula nut-foam-bar
          percent of charge
          batch 1000 g
          texture chewy
          caution hot-sugar
          caution nut
        stage foam
          1.00 % egg-white-powder
          2.00 % caster-sugar
          6.00 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          35.00 % white-sugar
          20.00 % glucose-syrup-42
          q.s. water
          boil under lid for 3 min until dissolved
          cook to 138 °C
        stage body
          5.00 % roasted-almond at 60 °C
          all of foam
          all of syrup
          stream syrup into foam over 90 s while whisking on low
          whip on high for 5 min until firm-peak
          check density 0.85-1.00 g/mL
          fold roasted-almond while whisking on low
        """);
  }

  @Test
  void mendsIt() {
    earlyDensityCheck.checkFix("Check it behind the last addition", """
        formula nut-foam-bar
          percent of charge
          batch 1000 g
          texture chewy
          caution hot-sugar
          caution nut
        stage foam
          1.00 % egg-white-powder
          2.00 % caster-sugar
          6.00 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          35.00 % white-sugar
          20.00 % glucose-syrup-42
          q.s. water
          boil under lid for 3 min until dissolved
          cook to 138 °C
        stage body
          25.00 % roasted-almond at 60 °C
          all of foam
          all of syrup
          stream syrup into foam over 90 s while whisking on low
          whip on high for 5 min until firm-peak
          check density 0.85-1.00 g/mL
          fold roasted-almond while whisking on low
        """, """
        formula nut-foam-bar
          percent of charge
          batch 1000 g
          texture chewy
          caution hot-sugar
          caution nut
        stage foam
          1.00 % egg-white-powder
          2.00 % caster-sugar
          6.00 % water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water while whisking on low
          stand for 30 min until hydrated
          whip on medium until soft-peak
        stage syrup
          35.00 % white-sugar
          20.00 % glucose-syrup-42
          q.s. water
          boil under lid for 3 min until dissolved
          cook to 138 °C
        stage body
          25.00 % roasted-almond at 60 °C
          all of foam
          all of syrup
          stream syrup into foam over 90 s while whisking on low
          whip on high for 5 min until firm-peak
          fold roasted-almond while whisking on low
          check density 0.85-1.00 g/mL
        """);
  }
}
