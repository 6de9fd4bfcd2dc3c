package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class SheetWithoutToleranceTest {

  private final RuleFixture sheetWithoutTolerance = RuleFixture.of(new SheetWithoutTolerance());

  @Test
  void marksABareCook() {
    sheetWithoutTolerance.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C
        sheet syrup-sheet of plain-syrup for production in en-GB
                             ^^^^^^^^^^^ sheet-without-tolerance: `syrup` of `plain-syrup` cooks to one temperature without a tolerance
        """);
  }

  @Test
  void offersNothingAsMarksABareCook() {
    sheetWithoutTolerance.checkNoFix("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C
        sheet syrup-sheet of plain-syrup for production in en-GB
        """);
  }

  @Test
  void marksWhatHasNothingToDecideBy() {
    sheetWithoutTolerance.check("""
        formula fruit-dough
          version   1 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        sheet syrup-sheet of fruit-bar for production in en-GB
                             ^^^^^^^^^ sheet-without-tolerance: `fruit-dough` has no tolerance, no `check` and nothing that it expects
        """);
  }

  @Test
  void takesAnExpectationForACriterion() {
    sheetWithoutTolerance.check("""
        formula fruit-dough
          version   1 on 2026-03-01
          status    bench
          percent   of charge
          expect    density 1.1-1.2 g/mL
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        sheet syrup-sheet of fruit-bar for production in en-GB
        """);
  }

  @Test
  void takesARangeForATolerance() {
    sheetWithoutTolerance.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 117-119 °C
        sheet syrup-sheet of plain-syrup for production in en-GB
        """);
  }

  @Test
  void leavesASheetForHomesAlone() {
    sheetWithoutTolerance.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C
        sheet syrup-sheet of plain-syrup for home in en-GB
        """);
  }
}
