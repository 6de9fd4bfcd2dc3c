package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** The pantry gives 0.40 g/mL as poured. */
class ConflictingDensityTest {

  private final RuleFixture conflictingDensity = RuleFixture.of(new ConflictingDensity());

  @Test
  void marksAFigureThatNobodySays() {
    conflictingDensity.check("""
        ingredient potato-whip-protein
          role      whipping
          density   0.60 g/mL bulk
                    ^^^^^^^^^ conflicting-density: 0.60 g/mL here, 0.4 g/mL in the built-in pantry
        """);
  }

  @Test
  void believesASpecification() {
    conflictingDensity.check("""
        ingredient potato-whip-protein
          role      whipping
          density   0.60 g/mL bulk from "supplier"
        """);
  }

  @Test
  void staysQuietWithinTenPercent() {
    conflictingDensity.check("""
        ingredient potato-whip-protein
          role      whipping
          density   0.43 g/mL bulk
        """);
  }

  @Test
  void tellsBulkAndTrueDensityApart() {
    conflictingDensity.check("""
        ingredient potato-whip-protein
          role      whipping
          density   0.60 g/mL
        """);
  }

  @Test
  void leavesAnIngredientOfItsOwnAlone() {
    conflictingDensity.check("""
        ingredient turnip-protein
          role      whipping
          density   0.60 g/mL bulk
        """);
  }

  @Test
  void writesThePantrysFigure() {
    conflictingDensity.checkFix("Write `0.4 g/mL`", """
        ingredient potato-whip-protein
          role      whipping
          density   0.60 g/mL bulk
        """, """
        ingredient potato-whip-protein
          role      whipping
          density   0.4 g/mL bulk
        """);
  }
}
