package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class SolidsTakenForDextroseTest {

  private final RuleFixture solidsTakenForDextrose = RuleFixture.of(new SolidsTakenForDextrose());

  @Test
  void marksTheEquivalentAsSolids() {
    solidsTakenForDextrose.check("""
        ingredient corn-syrup-42
          form syrup
          contains 42 % solids
          ^^^^^^^^^^^^^^^^^^^^ solids-taken-for-dextrose: `corn-syrup-42` has 42.00 % solids; starch syrups have about 80 %
        """);
  }

  @Test
  void leavesAThickSyrupAlone() {
    solidsTakenForDextrose.check("""
        ingredient corn-syrup-42
          form syrup
          contains 70 % solids
        ingredient agave-drops
          form syrup
          contains 42 % solids
        """);
  }

  @Test
  void writesBoth() {
    solidsTakenForDextrose.checkFix("Write `80 % solids` and `DE 42`", """
        ingredient corn-syrup-42
          form syrup
          contains 42 % solids
        """, """
        ingredient corn-syrup-42
          form syrup
          contains 80 % solids
          DE       42
        """);
  }

  @Test
  void leavesTheEquivalent() {
    solidsTakenForDextrose.checkFix("Write `80 % solids`", """
        ingredient own-syrup
          form syrup
          DE 42
          contains 42 % solids
        """, """
        ingredient own-syrup
          form syrup
          DE 42
          contains 80 % solids
        """);
  }
}
