package dev.kettlemark.checks;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Conversions against NIST SP 811 (2008), B.8: °C = (°F − 32) / 1.8. */
class MissingScaleTest {

  private final RuleFixture missingScale = RuleFixture.of(new MissingScale());

  @Test
  void looksAtWhatFillsUpTheRest() {
    missingScale.check("""
        formula syrup
        stage pan
          q.s. water at 20
                        ^^ missing-scale: 20 of which scale: 20 °C is 68 °F, 20 °F is -7 °C
        """);
  }

  @Test
  void marksATargetWithoutScaleAndTellsBothReadings() {
    missingScale.check("""
        formula syrup
        stage pan
          100.00 % white-sugar
          cook white-sugar to 248
                              ^^^ missing-scale: 248 of which scale: 248 °C is 478 °F, 248 °F is 120 °C
        """);
  }

  @Test
  void marksPlacesBelowAndAboveATemperature() {
    missingScale.check("""
        formula syrup
        stage pan
          100.00 % roasted-almond at 60
                                     ^^ missing-scale: 60 of which scale: 60 °C is 140 °F, 60 °F is 16 °C
          deposit above 65 within 10 min
                        ^^ missing-scale: 65 of which scale: 65 °C is 149 °F, 65 °F is 18 °C
          set for 12 h at 18-20 below 50 %RH
                          ^^^^^ missing-scale: 18-20 of which scale
        """);
  }

  @Test
  void marksLooseWordsForAScale() {
    missingScale.check("""
        formula syrup
        stage pan
          100.00 % white-sugar
          cook to 248 degrees
                  ^^^^^^^^^^^ missing-scale: 248 of which scale: 248 °C is 478 °F, 248 °F is 120 °C
          cook to 120 C
                  ^^^^^ missing-scale: 120 of which scale: 120 °C is 248 °F, 120 °F is 49 °C
        """);
  }

  @Test
  void marksThePantryToo() {
    missingScale.check("""
        ingredient agar-strip
          hydrates above 95 for 2 min
                         ^^ missing-scale: 95 of which scale: 95 °C is 203 °F, 95 °F is 35 °C
        """);
  }

  @Test
  void staysQuietWhereTheScaleStandsOrNoTemperatureIsMeant() {
    missingScale.check("""
        formula syrup
        stage pan
          100.00 % white-sugar at 20 °C
          cook to 120 °C +- 1
          cool to 100 °F
          whip at 3 for 2 min
          mix at 2
          cut to 40
          set at 50 %RH
        """);
  }

  @Test
  void leavesAFigureBeyondAnyKitchenUnconverted() {
    missingScale.check("""
        formula syrup
        stage pan
          100.00 % white-sugar
          cook to -5000
                  ^^^^^ missing-scale: -5000 of which scale
        """);
  }

  @Test
  void offersFahrenheitFirstWhereCelsiusWouldBurn() {
    missingScale.checkFirstFix("Write `248 °F`", syrup("cook to 248"), syrup("cook to 248 °F"));
  }

  @Test
  void offersTheSameInCelsius() {
    missingScale.checkFix("Write `120 °C`", syrup("cook to 248"), syrup("cook to 120 °C"));
  }

  @Test
  void leavesTheUnlikelyScalePossible() {
    missingScale.checkFix("Write `195 °F`", syrup("cook to 195"), syrup("cook to 195 °F"));
    missingScale.checkFix(
        "Write `150 °C`", syrup("deposit above 150"), syrup("deposit above 150 °C"));
  }

  @Test
  void offersNoScaleAtWhichSugarBurnsOrNothingBoils() {
    missingScale.checkFixes(List.of("Write `248 °F`", "Write `120 °C`"), syrup("cook to 248"));
    missingScale.checkFixes(List.of("Write `118 °C`"), syrup("cook to 118"));
  }

  @Test
  void offersCelsiusFirstWhereItIsUsual() {
    missingScale.checkFirstFix(
        "Write `118 °C`", syrup("cook to 118 +- 1"), syrup("cook to 118 °C +- 1"));
  }

  @Test
  void replacesALooseWord() {
    missingScale.checkFirstFix(
        "Write `248 °F`", syrup("cook to 248 degrees"), syrup("cook to 248 °F"));
    missingScale.checkFirstFix("Write `120 °C`", syrup("cook to 120 C"), syrup("cook to 120 °C"));
    missingScale.checkFirstFix("Write `248 °F`", syrup("cook to 248° F"), syrup("cook to 248 °F"));
  }

  private static String syrup(String step) {
    return "formula syrup\nstage pan\n  100.00 % white-sugar\n  " + step + "\n";
  }
}
