package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class FoamLiquidOffTest {

  private final RuleFixture foamLiquidOff = RuleFixture.of(new FoamLiquidOff());

  /** By hand: 2 % of a powder with 82.4 % protein (USDA SR26, food 01136) in 4 % of water make 28.9 %. */
  @Test
  void marksAPaste() {
    foamLiquidOff.check("""
        formula foam
          batch   1000 g
        stage foam
           2.00 %  egg-white-powder
                   ^^^^^^^^^^^^^^^^ foam-liquid-off: protein is 28.3 % of the protein and water that are whipped, usual is 1–20 %
           4.00 %  water
          whip    on medium until soft-peak
        stage syrup
          50.00 %  white-sugar
          q.s.     glucose-syrup-42
          22.00 %  water
          cook    to 119 °C
        """);
  }

  /** By hand: 0.1 % of it in 12 % of water make 0.7 %. */
  @Test
  void marksThinWater() {
    foamLiquidOff.check("""
        formula foam
          batch   1000 g
        stage foam
           0.10 %  egg-white-powder
                   ^^^^^^^^^^^^^^^^ foam-liquid-off: protein is 0.7 % of the protein and water that are whipped, usual is 1–20 %
          12.00 %  water
          whip    on medium until soft-peak
        stage syrup
          50.00 %  white-sugar
          q.s.     glucose-syrup-42
          22.00 %  water
          cook    to 119 °C
        """);
  }

  @Test
  void staysQuietOverTheUsualFoam() {
    foamLiquidOff.check("""
        formula foam
          batch   1000 g
        stage foam
           1.50 %  egg-white-powder
           9.00 %  water
          whip    on medium until soft-peak
        stage syrup
          50.00 %  white-sugar
          q.s.     glucose-syrup-42
          22.00 %  water
          cook    to 119 °C
        """);
  }

  @Test
  void takesChickpeaLiquidAsItIs() {
    foamLiquidOff.check("""
        formula foam
          batch   1000 g
        stage foam
          10.00 %  aquafaba
           0.00 %  water
          whip    on medium until soft-peak
        stage syrup
          50.00 %  white-sugar
          q.s.     glucose-syrup-42
          22.00 %  water
          cook    to 119 °C
        """);
  }

  /** By hand: 1.65 % of protein at 11 % ask for 13.3 % of water. */
  @Test
  void movesWaterIntoTheFoam() {
    foamLiquidOff.checkFix("Move 9.16 % of water from `syrup` to `foam`", """
        formula foam
          batch   1000 g
        stage foam
           2.00 %  egg-white-powder
           4.00 %  water
          whip    on medium until soft-peak
        stage syrup
          50.00 %  white-sugar
          q.s.     glucose-syrup-42
          22.00 %  water
          cook    to 119 °C
        """, """
        formula foam
          batch   1000 g
        stage foam
           2.00 %  egg-white-powder
           13.16 %  water
          whip    on medium until soft-peak
        stage syrup
          50.00 %  white-sugar
          q.s.     glucose-syrup-42
          12.84 %  water
          cook    to 119 °C
        """);
  }
}
