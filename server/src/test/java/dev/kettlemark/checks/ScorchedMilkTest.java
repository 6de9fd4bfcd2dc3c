package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ScorchedMilkTest {

  private final RuleFixture scorchedMilk = RuleFixture.of(new ScorchedMilk());

  @Test
  void marksMilkInAHotPan() {
    scorchedMilk.check("""
        formula toffee
          batch   1000 g
        stage pan
          45 %    white-sugar
          25 %    glucose-syrup-42
          20 %    condensed-milk
          10 %    water
          cook    to 138 °C
                     ^^^^^^ scorched-milk: `condensed-milk` scorches at 138 °C
        """);
  }

  @Test
  void countsWhatAnEarlierStageBrings() {
    scorchedMilk.check("""
        formula toffee
          batch   1000 g
        stage milk
          20 %    condensed-milk
        stage pan
          45 %    white-sugar
          25 %    glucose-syrup-42
          10 %    water
          all of  milk
          cook    to 138 °C
                     ^^^^^^ scorched-milk: `condensed-milk` scorches at 138 °C
        """);
  }

  @Test
  void allowsTheUsualCaramel() {
    scorchedMilk.check("""
        formula caramel
          batch   1000 g
        stage pan
          45 %    white-sugar
          25 %    glucose-syrup-42
          20 %    condensed-milk
          10 %    water
          cook    to 125 °C
        """);
  }

  @Test
  void allowsButterAndNutsInABrittle() {
    scorchedMilk.check("""
        formula brittle
          batch   1000 g
        stage pan
          40 %    white-sugar
          20 %    glucose-syrup-42
          20 %    butter
          10 %    peanut
          10 %    water
          cook    to 150 °C
        """);
  }

  @Test
  void leavesWhatGoesInAfterwards() {
    scorchedMilk.check("""
        formula toffee
          batch   1000 g
        stage pan
          50 %    white-sugar
          30 %    glucose-syrup-42
          10 %    water
          10 %    condensed-milk
          cook    white-sugar, glucose-syrup-42, water to 150 °C
          mix     condensed-milk
        """);
  }

  @Test
  void cooksLessFar() {
    scorchedMilk.checkFix("Cook to 122 °C", """
        formula toffee
          batch   1000 g
        stage pan
          45 %    white-sugar
          25 %    glucose-syrup-42
          20 %    condensed-milk
          10 %    water
          cook    to 138 °C
        """, """
        formula toffee
          batch   1000 g
        stage pan
          45 %    white-sugar
          25 %    glucose-syrup-42
          20 %    condensed-milk
          10 %    water
          cook    to 122 °C
        """);
  }
}
