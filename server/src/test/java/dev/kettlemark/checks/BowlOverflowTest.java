package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Densities of egg-white foam and meringue: common practice, no source. */
class BowlOverflowTest {

  private final RuleFixture bowlOverflow = RuleFixture.of(new BowlOverflow());

  @Test
  void marksTheMistake() {
    bowlOverflow.check("""
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
          batch 1800 g
          caution hot-sugar
        stage foam in stand-mixer
          28.00 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          ^^^^ bowl-overflow: the whipped mass takes about 2.96–5.04 L, and `stand-mixer` holds 4.80 L
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
          ^^^^ bowl-overflow: the whipped mass takes about 3.82–6.86 L, and `stand-mixer` holds 4.80 L
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    bowlOverflow.check("""
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
          batch 900 g
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
  void isContentWithRoomToSpare() {
    bowlOverflow.check("""
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
          batch 900 g
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
  void warnsOfAFullBowl() {
    bowlOverflow.check("""
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
          batch 1750 g
          caution hot-sugar
        stage foam in stand-mixer
          28.00 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          ^^^^ bowl-overflow: the whipped mass takes about 2.88–4.90 L, and `stand-mixer` holds 4.80 L
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
          ^^^^ bowl-overflow: the whipped mass takes about 3.71–6.67 L, and `stand-mixer` holds 4.80 L
        """);
  }

  @Test
  void marksWhatOverflowsAtItsDensest() {
    bowlOverflow.check("""
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
          batch 3000 g
          caution hot-sugar
        stage foam in stand-mixer
          28.00 % egg-white-pasteurised
          6.00 % caster-sugar
          whip egg-white-pasteurised on medium until foam
          ^^^^ bowl-overflow: the whipped mass takes about 4.94–8.40 L, and `stand-mixer` holds 4.80 L
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
          ^^^^ bowl-overflow: the whipped mass takes about 6.36–11.43 L, and `stand-mixer` holds 4.80 L
        """);
  }

  @Test
  void saysNothingWithoutABatch() {
    bowlOverflow.check("""
        house small-kitchen
          bowl stand-mixer holds 4.8 L whips 90-1800 g

        formula cooked-meringue
          percent of charge
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
