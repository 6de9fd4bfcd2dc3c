package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class OverheatedWaterBathTest {

  private final RuleFixture overheatedWaterBath = RuleFixture.of(new OverheatedWaterBath());

  @Test
  void marksWhatNoBathReaches() {
    overheatedWaterBath.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          warm    to 110 °C on water-bath
                     ^^^^^^ overheated-water-bath: `water-bath` does not bring a mass to 110 °C
        """);
  }

  @Test
  void allowsWhatABathReaches() {
    overheatedWaterBath.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          warm    to 95 °C on water-bath
          warm    to 110 °C on direct-heat
        """);
  }

  @Test
  void heatsItDirectly() {
    overheatedWaterBath.checkFix("Heat it on `direct-heat`", """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          warm    to 110 °C on bain-marie
        """, """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          warm    to 110 °C on direct-heat
        """);
  }

  @Test
  void staysBelowTheBoil() {
    overheatedWaterBath.checkFix("Lower it to 95 °C", """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          warm    to 110 °C on water-bath
        """, """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          warm    to 95 °C on water-bath
        """);
  }
}
