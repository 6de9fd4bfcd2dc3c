package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** 60 × 25 × 18 mm is 27 mL, at 1.32 g/mL 35.6 g. */
class CutOffWeightTest {

  private final RuleFixture cutOffWeight = RuleFixture.of(new CutOffWeight());

  @Test
  void marksTheMistake() {
    cutOffWeight.check("""
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g with 10 % loss
          caution hot-sugar
        stage mass
          30.00 % white-sugar
          40.00 % glucose-syrup-42
          q.s. cream-35
          boil for 2 min until dissolved
          cook to 118 °C
        stage slab
          all of mass
          deposit mass into slab above 80 °C
          set for 12 h at 18-20 °C
          cut 60 x 25 mm
              ^^ cut-off-weight: a piece of 60 x 25 x 18 mm weighs 35.6 g, not 42.0 g
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    cutOffWeight.check("""
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g with 10 % loss
          caution hot-sugar
        stage mass
          30.00 % white-sugar
          40.00 % glucose-syrup-42
          q.s. cream-35
          boil for 2 min until dissolved
          cook to 118 °C
        stage slab
          all of mass
          deposit mass into slab above 80 °C
          set for 12 h at 18-20 °C
          cut 71 x 25 mm
        """);
  }

  @Test
  void allowsAFewPercent() {
    cutOffWeight.check("""
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g with 10 % loss
          caution hot-sugar
        stage mass
          30.00 % white-sugar
          40.00 % glucose-syrup-42
          q.s. cream-35
          boil for 2 min until dissolved
          cook to 118 °C
        stage slab
          all of mass
          deposit mass into slab above 80 °C
          set for 12 h at 18-20 °C
          cut 69 x 25 mm
        """);
  }

  @Test
  void mendsIt() {
    cutOffWeight.checkFix("Cut 71 long", """
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g with 10 % loss
          caution hot-sugar
        stage mass
          30.00 % white-sugar
          40.00 % glucose-syrup-42
          q.s. cream-35
          boil for 2 min until dissolved
          cook to 118 °C
        stage slab
          all of mass
          deposit mass into slab above 80 °C
          set for 12 h at 18-20 °C
          cut 60 x 25 mm
        """, """
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g with 10 % loss
          caution hot-sugar
        stage mass
          30.00 % white-sugar
          40.00 % glucose-syrup-42
          q.s. cream-35
          boil for 2 min until dissolved
          cook to 118 °C
        stage slab
          all of mass
          deposit mass into slab above 80 °C
          set for 12 h at 18-20 °C
          cut 71 x 25 mm
        """);
  }
}
