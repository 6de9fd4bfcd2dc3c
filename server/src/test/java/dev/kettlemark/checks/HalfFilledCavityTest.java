package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** 8 g at 1.30 g/mL takes 6.15 mL, which is 44 % of 14 mL. */
class HalfFilledCavityTest {

  private final RuleFixture halfFilledCavity = RuleFixture.of(new HalfFilledCavity());

  @Test
  void marksTheMistake() {
    halfFilledCavity.check("""
        house small-kitchen
          mould dome-20 has 20 pieces of 14 mL
          mould dome-12 has 12 pieces of 24 mL

        formula caramel
          percent of charge
          batch 1000 g
          texture chewy
          expect density 1.30-1.36 g/mL
          makes 40 pieces of 8 g with 5 % loss
                             ^^^ half-filled-cavity: 8.00 g fills 42.0–44.0 % of `dome-20`
          caution hot-sugar
        stage mass
          30.00 % white-sugar
          40.00 % glucose-syrup-42
          q.s. cream-35
          boil for 2 min until dissolved
          cook to 118 °C
          deposit into dome-20 above 80 °C
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    halfFilledCavity.check("""
        house small-kitchen
          mould dome-20 has 20 pieces of 14 mL
          mould dome-12 has 12 pieces of 24 mL

        formula caramel
          percent of charge
          batch 1000 g
          texture chewy
          expect density 1.30-1.36 g/mL
          makes 40 pieces of 18 g with 5 % loss
          caution hot-sugar
        stage mass
          30.00 % white-sugar
          40.00 % glucose-syrup-42
          q.s. cream-35
          boil for 2 min until dissolved
          cook to 118 °C
          deposit into dome-20 above 80 °C
        """);
  }

  @Test
  void isContentAboveTheLimit() {
    halfFilledCavity.check("""
        house small-kitchen
          mould dome-20 has 20 pieces of 14 mL
          mould dome-12 has 12 pieces of 24 mL

        formula caramel
          percent of charge
          batch 1000 g
          texture chewy
          expect density 1.30-1.36 g/mL
          makes 40 pieces of 11.5 g with 5 % loss
          caution hot-sugar
        stage mass
          30.00 % white-sugar
          40.00 % glucose-syrup-42
          q.s. cream-35
          boil for 2 min until dissolved
          cook to 118 °C
          deposit into dome-20 above 80 °C
        """);
  }

  @Test
  void mendsIt() {
    halfFilledCavity.checkFix("Fill 18.2 g", """
        house small-kitchen
          mould dome-20 has 20 pieces of 14 mL
          mould dome-12 has 12 pieces of 24 mL

        formula caramel
          percent of charge
          batch 1000 g
          texture chewy
          expect density 1.30-1.36 g/mL
          makes 40 pieces of 8 g with 5 % loss
          caution hot-sugar
        stage mass
          30.00 % white-sugar
          40.00 % glucose-syrup-42
          q.s. cream-35
          boil for 2 min until dissolved
          cook to 118 °C
          deposit into dome-20 above 80 °C
        """, """
        house small-kitchen
          mould dome-20 has 20 pieces of 14 mL
          mould dome-12 has 12 pieces of 24 mL

        formula caramel
          percent of charge
          batch 1000 g
          texture chewy
          expect density 1.30-1.36 g/mL
          makes 40 pieces of 18.2 g with 5 % loss
          caution hot-sugar
        stage mass
          30.00 % white-sugar
          40.00 % glucose-syrup-42
          q.s. cream-35
          boil for 2 min until dissolved
          cook to 118 °C
          deposit into dome-20 above 80 °C
        """);
  }
}
