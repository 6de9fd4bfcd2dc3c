package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UndissolvedCookTest {

  private final RuleFixture undissolvedCook = RuleFixture.of(new UndissolvedCook());

  @Test
  void marksASyrupOfMuchSucrose() {
    undissolvedCook.check("""
        formula syrup
        stage pan
          60 %   white-sugar
          15 %   glucose-syrup-42
          25 %   water
          cook   to 125 °C
          ^^^^ undissolved-cook: 83.1 % of the solids are sucrose, and no step clears the wall of the pan
        """);
  }

  @Test
  void isContentWithALid() {
    undissolvedCook.check("""
        formula syrup
        stage pan
          60 %   white-sugar
          15 %   glucose-syrup-42
          25 %   water
          boil   under lid for 3 min
          cook   to 125 °C
        """);
  }

  @Test
  void isContentWithADissolvedSyrup() {
    undissolvedCook.check("""
        formula syrup
        stage pan
          60 %   white-sugar
          15 %   glucose-syrup-42
          25 %   water
          warm   to 90 °C until dissolved
          cook   to 125 °C
        """);
  }

  @Test
  void isContentWithAWash() {
    undissolvedCook.check("""
        formula syrup
        stage pan
          60 %   white-sugar
          15 %   glucose-syrup-42
          25 %   water
          cook   to 125 °C while washing
        """);
  }

  @Test
  void leavesASyrupOfManySugarsAlone() {
    undissolvedCook.check("""
        formula syrup
        stage pan
          36 %   white-sugar
          34 %   glucose-syrup-42
          25 %   water
          cook   to 125 °C
        """);
  }

  @Test
  void leavesALowCookAlone() {
    undissolvedCook.check("""
        formula syrup
        stage pan
          60 %   white-sugar
          15 %   glucose-syrup-42
          25 %   water
          cook   to 108 °C
        """);
  }

  @Test
  void leavesDrySugarAlone() {
    undissolvedCook.check("""
        formula syrup
        stage pan
          90 %   white-sugar
          6 %   glucose-syrup-42
          2 %   water
          cook   to 165 °C
        """);
  }

  @Test
  void boilsItUnderALid() {
    undissolvedCook.checkFix("Boil it under a lid first", """
        formula syrup
        stage pan
          60 %   white-sugar
          15 %   glucose-syrup-42
          25 %   water
          cook   to 125 °C
        """, """
        formula syrup
        stage pan
          60 %   white-sugar
          15 %   glucose-syrup-42
          25 %   water
          boil      under lid for 3 min until dissolved
          cook   to 125 °C
        """);
  }
}
