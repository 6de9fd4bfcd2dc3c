package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class SpoilingOnShelfTest {

  private final RuleFixture spoilingOnShelf = RuleFixture.of(new SpoilingOnShelf());

  /** Beuchat (1981): yeasts that tolerate sugar grow from 0.60 on. */
  @Test
  void marksAWetPieceThatIsToKeep() {
    spoilingOnShelf.check("""
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          shelf 4 months at 15-18 °C
                ^^^^^^^^ spoiling-on-shelf: `sweet` has a water activity of 0.68–0.72, too wet for 4 months in a room
        """);
  }

  @Test
  void staysQuietOverADryPiece() {
    spoilingOnShelf.check("""
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 119 °C
        product bonbon
          centre 10 g sweet
          shelf 4 months at 15-18 °C
        """);
  }

  @Test
  void staysQuietInTheColdAndForAFortnight() {
    spoilingOnShelf.check("""
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          shelf 4 months at 2-5 °C
        product fresh
          centre 10 g sweet
          shelf 2 weeks at 15-18 °C
        """);
  }

  @Test
  void isOnlyWorthKnowingForAShortTime() {
    spoilingOnShelf.checkSeverity(Severity.INFORMATION, """
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          shelf 2 months at 15-18 °C
        """);
  }

  @Test
  void leavesWhatMakesPeopleIllToAnotherRule() {
    spoilingOnShelf.check(wet(""));
    spoilingOnShelf.check(wet("  expect acidity 5.0 pH\n"));
  }

  /** Acid keeps bacteria down, and no mould. */
  @Test
  void tellsOfMouldsOnASourPiece() {
    spoilingOnShelf.checkSeverity(Severity.WARNING, wet("  expect acidity 3.4 pH\n"));
  }

  private static String wet(String said) {
    return """
        formula sweet
          batch   1000 g
          texture soft
        %sstage pan
          45.00 % white-sugar
          10.00 % glucose-syrup-42
          45.00 % water
          boil under lid for 2 min until dissolved
          cook to 101.5 °C
        product bonbon
          centre 10 g sweet
          shelf 2 months at 15-18 °C
        """.replace("%s", said);
  }

  @Test
  void countsWhatIsLeftBetweenCrystals() {
    spoilingOnShelf.check("""
        formula sweet
          batch   1000 g
          texture short
        stage pan
          65.00 % white-sugar
          10.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 117 °C
        product bonbon
          centre 10 g sweet
          shelf 4 months at 15-18 °C
                ^^^^^^^^ spoiling-on-shelf: `sweet` has a water activity of 0.80–0.84, too wet for 4 months in a room
        """);
  }

  @Test
  void keepsItCold() {
    spoilingOnShelf.checkFix("Keep it cold, at 2–5 °C", """
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          shelf 4 months at 15-18 °C
        """, """
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          shelf 4 months at 2-5 °C
        """);
  }

  @Test
  void keepsItForLess() {
    spoilingOnShelf.checkFix("Shorten the shelf life to 2 weeks", """
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          shelf 4 months
        """, """
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          shelf 2 weeks
        """);
  }
}
