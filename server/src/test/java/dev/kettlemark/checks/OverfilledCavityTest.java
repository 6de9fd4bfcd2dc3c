package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** 20 g at 1.30 g/mL takes 15.4 mL, at 1.36 g/mL 14.7 mL. */
class OverfilledCavityTest {

  private final RuleFixture overfilledCavity = RuleFixture.of(new OverfilledCavity());

  @Test
  void marksTheMistake() {
    overfilledCavity.check("""
        house small-kitchen
          mould dome-20 has 20 pieces of 14 mL
          mould dome-12 has 12 pieces of 24 mL

        formula caramel
          percent of charge
          batch 1000 g
          texture chewy
          expect density 1.30-1.36 g/mL
          makes 40 pieces of 20 g with 5 % loss
                             ^^^^ overfilled-cavity: 20.0 g at 1.30–1.36 g/mL takes 14.7–15.4 mL, and `dome-20` holds 14.0 mL
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
    overfilledCavity.check("""
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
  void doubtsAtTheLighterEnd() {
    overfilledCavity.check("""
        house small-kitchen
          mould dome-20 has 20 pieces of 14 mL
          mould dome-12 has 12 pieces of 24 mL

        formula caramel
          percent of charge
          batch 1000 g
          texture chewy
          expect density 1.30-1.36 g/mL
          makes 40 pieces of 18.8 g with 5 % loss
                             ^^^^^^ overfilled-cavity: 18.8 g at 1.30–1.36 g/mL takes 13.8–14.5 mL, and `dome-20` holds 14.0 mL
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
  void isContentWithAFullCavity() {
    overfilledCavity.check("""
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

  @Test
  void isCertainAtAnyDensity() {
    overfilledCavity.checkSeverity(Severity.ERROR, """
        house small-kitchen
          mould dome-20 has 20 pieces of 14 mL
          mould dome-12 has 12 pieces of 24 mL

        formula caramel
          percent of charge
          batch 1000 g
          texture chewy
          expect density 1.30-1.36 g/mL
          makes 40 pieces of 20 g with 5 % loss
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
  void doubtsOneEnd() {
    overfilledCavity.checkSeverity(Severity.WARNING, """
        house small-kitchen
          mould dome-20 has 20 pieces of 14 mL
          mould dome-12 has 12 pieces of 24 mL

        formula caramel
          percent of charge
          batch 1000 g
          texture chewy
          expect density 1.30-1.36 g/mL
          makes 40 pieces of 18.8 g with 5 % loss
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
    overfilledCavity.checkFix("Fill 18.2 g", """
        house small-kitchen
          mould dome-20 has 20 pieces of 14 mL
          mould dome-12 has 12 pieces of 24 mL

        formula caramel
          percent of charge
          batch 1000 g
          texture chewy
          expect density 1.30-1.36 g/mL
          makes 40 pieces of 20 g with 5 % loss
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
