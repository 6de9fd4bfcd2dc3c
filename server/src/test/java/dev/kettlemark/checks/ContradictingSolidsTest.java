package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ContradictingSolidsTest {

  private final RuleFixture contradictingSolids = RuleFixture.of(new ContradictingSolids());

  /** By hand with the boiling model: 118 °C leaves some 88 % solids of two parts of sucrose to one of syrup. */
  @Test
  void marksSolidsThatTheCookCannotLeave() {
    contradictingSolids.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C
          check   solids 80 %
                         ^^^^ contradicting-solids: the steps before leave 87.1–88.9 % solids, not 80.0 %
        """);
  }

  @Test
  void marksMoistureAsWell() {
    contradictingSolids.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C
          check   moisture 20 % +- 1
                           ^^^^^^^^^ contradicting-solids: the steps before leave 11.1–12.9 % water, not 19.0–21.0 %
        """);
  }

  @Test
  void staysQuietWithinTheGap() {
    contradictingSolids.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C
          check   solids 86 %
          check   moisture 12 % +- 1
        """);
  }

  @Test
  void saysNothingOfOtherFigures() {
    contradictingSolids.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C
          check   density 1.38 g/mL
        """);
  }

  @Test
  void checksForWhatIsLeft() {
    contradictingSolids.checkFix("Check for 88 % solids", """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C
          check   solids 80 %
        """, """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C
          check   solids 88 %
        """);
  }

  @Test
  void cooksToWhatLeavesThem() {
    contradictingSolids.checkFix("Cook to 109 °C", """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 118 °C
          check   solids 80 %
        """, """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 109 °C
          check   solids 80 %
        """);
  }
}
