package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** A slab of 300 × 220 mm holds 12 × 3 pieces of 25 × 71 mm: 63,900 of 66,000 mm² are used. */
class CuttingWasteTest {

  private final RuleFixture cuttingWaste = RuleFixture.of(new CuttingWaste());

  @Test
  void marksTheMistake() {
    cuttingWaste.check("""
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g with 2 % loss
                             ^^^^ cutting-waste: `slab` gives 36 pieces and leaves 3.2 % of its slab, and 2.0 % is planned as loss
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
  void isContentWithTheRightForm() {
    cuttingWaste.check("""
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g with 16 % loss
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
  void isContentWithALossThatCoversIt() {
    cuttingWaste.check("""
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g with 16 % loss
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
  void plansALossWhereNoneIs() {
    cuttingWaste.check("""
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g
                             ^^^^ cutting-waste: `slab` gives 36 pieces and leaves 3.2 % of its slab, and nothing is planned as loss
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
  void mendsIt() {
    cuttingWaste.checkFix("Plan a loss of 4 %", """
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g with 2 % loss
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
        """, """
        house small-kitchen
          frame slab measures 300 x 220 x 18 mm

        formula cut-caramel
          percent of charge
          batch 2000 g
          texture chewy
          expect density 1.32 g/mL
          makes 20 pieces of 42 g with 4 % loss
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
