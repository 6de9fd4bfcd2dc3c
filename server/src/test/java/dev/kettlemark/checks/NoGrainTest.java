package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class NoGrainTest {

  private final RuleFixture noGrain = RuleFixture.of(new NoGrain());

  /** By hand: 40 g of syrup bring 32.1 g to 40 g of sucrose, 44.6 %. */
  @Test
  void tellsOfADoctorThatHoldsBackTheGrain() {
    noGrain.check("""
        formula sweet
          batch   1000 g
          texture short
                  ^^^^^ no-grain: 44.6 % of the saccharides are not sucrose and hold back the grain
        stage pan
          40.00 % white-sugar
          40.00 % glucose-syrup-42
          20.00 % water
          boil under lid for 2 min until dissolved
          cook to 118 °C
        """);
  }

  @Test
  void tellsOfSucroseThatStaysDissolved() {
    noGrain.check("""
        formula sweet
          batch   1000 g
          texture short
                  ^^^^^ no-grain: all its sucrose stays dissolved, 0.56 times saturated
        stage pan
          45.00 % white-sugar
          15.00 % glucose-syrup-42
          40.00 % water
          boil under lid for 2 min until dissolved
          cook to 102 °C
        """);
  }

  @Test
  void staysQuietOverAFondant() {
    noGrain.check("""
        formula sweet
          batch   1000 g
          texture short
        stage pan
          65.00 % white-sugar
          10.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 117 °C
        """);
  }

  @Test
  void staysQuietWhereASeedGoesIn() {
    noGrain.check("""
        formula sweet
          batch   1000 g
          texture short
        stage pan
          36.00 % white-sugar
          40.00 % glucose-syrup-42
          20.00 % water
          boil under lid for 2 min until dissolved
          cook to 118 °C
        stage body
           4.00 % icing-sugar
          all of pan
          mix
        """);
  }

  @Test
  void swapsSyrupForSugar() {
    noGrain.checkFix("Swap part of `glucose-syrup-42` for `white-sugar`", """
        formula sweet
          batch   1000 g
          texture short
        stage pan
          40.00 % white-sugar
          40.00 % glucose-syrup-42
          20.00 % water
          boil under lid for 2 min until dissolved
          cook to 118 °C
        """, """
        formula sweet
          batch   1000 g
          texture short
        stage pan
          54.14 % white-sugar
          22.43 % glucose-syrup-42
          23.43 % water
          boil under lid for 2 min until dissolved
          cook to 118 °C
        """);
  }
}
