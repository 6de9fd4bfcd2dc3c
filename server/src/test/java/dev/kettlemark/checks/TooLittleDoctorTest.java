package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TooLittleDoctorTest {

  private final RuleFixture tooLittleDoctor = RuleFixture.of(new TooLittleDoctor());

  /** By hand: 5 g of syrup bring 4 g of other saccharides to 70 g of sucrose, 5.4 %. */
  @Test
  void marksABoiledSweetOfSugarAlone() {
    tooLittleDoctor.check("""
        formula sweet
          batch   1000 g
          texture hard
                  ^^^^ too-little-doctor: only 5.4 % of the saccharides are not sucrose, and the sucrose is 16.8–50.0 times saturated
        stage pan
          70.00 % white-sugar
           5.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        """);
  }

  @Test
  void marksAWetChewAsWell() {
    tooLittleDoctor.check("""
        formula sweet
          batch   1000 g
          texture chewy
                  ^^^^^ too-little-doctor: only 5.4 % of the saccharides are not sucrose, and the sucrose is 2.4–2.7 times saturated
        stage pan
          70.00 % white-sugar
           5.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 112 °C
        """);
  }

  /** By hand: 18 g of syrup bring 14.5 g to 60 g of sucrose, 19.4 %. */
  @Test
  void staysQuietWithEnough() {
    tooLittleDoctor.check("""
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          60.00 % white-sugar
          18.00 % glucose-syrup-42
          22.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        """);
  }

  @Test
  void leavesGrainThatIsWantedAlone() {
    tooLittleDoctor.check("""
        formula sweet
          batch   1000 g
          texture short
        stage pan
          70.00 % white-sugar
           5.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 118 °C
        """);
  }

  @Test
  void leavesCaramelAlone() {
    tooLittleDoctor.check("""
        formula sweet
          batch   1000 g
          texture brittle
        stage pan
          70.00 % white-sugar
           5.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 172 °C
        """);
  }

  @Test
  void leavesBoiledAcidAlone() {
    tooLittleDoctor.check("""
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          70.00 % white-sugar
           5.00 % glucose-syrup-42
          24.80 % water
           0.20 % cream-of-tartar
          boil under lid for 2 min until dissolved
          cook to 150 °C
        """);
  }

  @Test
  void swapsSugarForSyrup() {
    tooLittleDoctor.checkFix("Swap part of `white-sugar` for `glucose-syrup-42`", """
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          70.00 % white-sugar
           5.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        """, """
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          51.82 % white-sugar
           27.60 % glucose-syrup-42
          20.58 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        """);
  }

  @Test
  void addsASyrupWhereThereIsNone() {
    tooLittleDoctor.checkFix("Swap part of `white-sugar` for `glucose-syrup-42`", """
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          75.00 % white-sugar
          q.s.    water
          cook to 150 °C
        """, """
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          52.50 % white-sugar
          27.96 %             glucose-syrup-42
          q.s.    water
          cook to 150 °C
        """);
  }
}
