package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class AlreadyConcentratedTest {

  private final RuleFixture alreadyConcentrated = RuleFixture.of(new AlreadyConcentrated());

  @Test
  void marksAChargeThatIsThickerThanTheTargetLeaves() {
    alreadyConcentrated.check("""
        formula syrup
        stage pan
          82 %    white-sugar
          18 %    water
          cook    to 106 °C
                     ^^^^^^ already-concentrated: the charge first boils at 110.9 °C, above the target of 106 °C
        """);
  }

  @Test
  void staysQuietWhereWaterIsToLeave() {
    alreadyConcentrated.check("""
        formula syrup
        stage pan
          70 %    white-sugar
          30 %    water
          cook    to 106 °C
        """);
  }

  @Test
  void allowsForTheErrorOfTheModel() {
    alreadyConcentrated.check("""
        formula syrup
        stage pan
          74 %    white-sugar
          26 %    water
          cook    to 106 °C
        """);
  }

  @Test
  void leavesATargetBelowBoilingToItsOwnRule() {
    alreadyConcentrated.check("""
        formula syrup
        stage pan
          82 %    white-sugar
          18 %    water
          cook    to 60 °C
        """);
  }

  @Test
  void saysNothingOfAChargeThatIsUnknown() {
    alreadyConcentrated.check("""
        formula syrup
        stage pan
          82 %    mystery-sugar
          18 %    water
          cook    to 106 °C
        """);
  }

  @Test
  void countsTheMassesThatAStageTakes() {
    alreadyConcentrated.check("""
        formula syrup
        stage wet
          50 %    water
        stage pan
          50 %    white-sugar
          all of  wet
          cook    to 106 °C
        """);
  }

  @Test
  void raisesTheTarget() {
    alreadyConcentrated.checkFix("Cook to 111 °C", """
        formula syrup
        stage pan
          82 %    white-sugar
          18 %    water
          cook    to 106 °C
        """, """
        formula syrup
        stage pan
          82 %    white-sugar
          18 %    water
          cook    to 111 °C
        """);
  }

  @Test
  void raisesTheTargetInItsScale() {
    alreadyConcentrated.checkFix("Cook to 232 °F", """
        formula syrup
        stage pan
          82 %    white-sugar
          18 %    water
          cook    to 222 °F
        """, """
        formula syrup
        stage pan
          82 %    white-sugar
          18 %    water
          cook    to 232 °F
        """);
  }

  /** By hand: 820 g of solids at 73.2 % make 1120 g, and 180 g of the 300 g of water are there. */
  @Test
  void tellsBothSolidsAndTheWaterThatIsMissing() {
    alreadyConcentrated.checkNote(
        "it holds 82.0 % solids, and this target leaves 73.2 %; it wants at least 119.9 g more water",
        """
        formula syrup
          batch   1000 g
        stage pan
          82 %    white-sugar
          18 %    water
          cook    to 106 °C
        """);
  }
}
