package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TextureMismatchTest {

  private final RuleFixture textureMismatch = RuleFixture.of(new TextureMismatch());

  @Test
  void marksABrittleThatBends() {
    textureMismatch.check("""
        formula sweet
          batch   1000 g
          texture brittle
                  ^^^^^^^ texture-mismatch: the sugars will be chewy: the room is 22–36 °C above its glass transition
        stage pan
          45.00 % white-sugar
          30.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 122 °C
        """);
  }

  @Test
  void marksAChewThatSnaps() {
    textureMismatch.check("""
        formula sweet
          batch   1000 g
          texture chewy
                  ^^^^^ texture-mismatch: the sugars will be glassy: the room is 19–39 °C below its glass transition
        stage pan
          45.00 % white-sugar
          30.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 155 °C
        """);
  }

  @Test
  void staysQuietWhereTheBandReaches() {
    textureMismatch.check("""
        formula sweet
          batch   1000 g
          texture brittle
        stage pan
          45.00 % white-sugar
          30.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 146 °C
        """);
  }

  @Test
  void leavesWhatIsMostlyNutsAlone() {
    textureMismatch.check("""
        formula sweet
          batch   1000 g
          texture brittle
        stage pan
          17.00 % white-sugar
           8.00 % glucose-syrup-42
           5.00 % water
          boil under lid for 2 min until dissolved
          cook to 122 °C
        stage body
          70.00 % roasted-almond
          all of pan
          mix
        """);
  }

  @Test
  void cooksFurther() {
    textureMismatch.checkFix("Cook to 139 °C", """
        formula sweet
          batch   1000 g
          texture brittle
        stage pan
          45.00 % white-sugar
          30.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 122 °C
        """, """
        formula sweet
          batch   1000 g
          texture brittle
        stage pan
          45.00 % white-sugar
          30.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 139 °C
        """);
  }

  @Test
  void callsItWhatItIs() {
    textureMismatch.checkFix("Write `texture chewy`", """
        formula sweet
          batch   1000 g
          texture brittle
        stage pan
          45.00 % white-sugar
          30.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 122 °C
        """, """
        formula sweet
          batch   1000 g
          texture chewy
        stage pan
          45.00 % white-sugar
          30.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 122 °C
        """);
  }
}
