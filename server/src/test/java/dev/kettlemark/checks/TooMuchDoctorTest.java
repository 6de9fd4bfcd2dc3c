package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TooMuchDoctorTest {

  private final RuleFixture tooMuchDoctor = RuleFixture.of(new TooMuchDoctor());

  /** By hand: 60 g of syrup bring 48.2 g to 20 g of sucrose, 70.7 %. */
  @Test
  void marksABoiledSweetOfSyrup() {
    tooMuchDoctor.check("""
        formula sweet
          batch   1000 g
          texture hard
                  ^^^^ too-much-doctor: 70.7 % of the saccharides are not sucrose, most of them of `glucose-syrup-42`
        stage pan
          20.00 % white-sugar
          60.00 % glucose-syrup-42
          20.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        """);
  }

  @Test
  void marksAChewOfSyrup() {
    tooMuchDoctor.check("""
        formula sweet
          batch   1000 g
          texture chewy
                  ^^^^^ too-much-doctor: 76.3 % of the saccharides are not sucrose, most of them of `glucose-syrup-42`
        stage pan
          15.00 % white-sugar
          60.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 122 °C
        """);
  }

  @Test
  void allowsAChewMore() {
    tooMuchDoctor.check("""
        formula sweet
          batch   1000 g
          texture chewy
        stage pan
          25.00 % white-sugar
          60.00 % glucose-syrup-42
          15.00 % water
          boil under lid for 2 min until dissolved
          cook to 122 °C
        """);
  }

  /** By hand: 45 g of syrup bring 36.1 g to 32 g of sucrose, 53 %. */
  @Test
  void staysQuietBelowTheLimit() {
    tooMuchDoctor.check("""
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          32.00 % white-sugar
          45.00 % glucose-syrup-42
          23.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        """);
  }

  @Test
  void swapsSyrupForSugar() {
    tooMuchDoctor.checkFix("Swap part of `glucose-syrup-42` for `white-sugar`", """
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          20.00 % white-sugar
          60.00 % glucose-syrup-42
          20.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        """, """
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          34.14 % white-sugar
          42.43 % glucose-syrup-42
          23.43 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        """);
  }
}
