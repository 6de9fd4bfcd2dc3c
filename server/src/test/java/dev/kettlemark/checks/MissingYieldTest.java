package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MissingYieldTest {

  private final RuleFixture missingYield = RuleFixture.of(new MissingYield());

  @Test
  void marksAReleasedFormulaThatBoilsDown() {
    missingYield.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
                    ^^^^^^^^ missing-yield: `plain-syrup` is released without a yield
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void mendsMarksAReleasedFormulaThatBoilsDown() {
    missingYield.checkFirstFix("Add `expect yield 79.6 % ± 0.8`", """
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """, """
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
          expect    yield 79.6 % ± 0.8
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void marksAReleasedProductWithoutPieces() {
    missingYield.check("""
        product fruit-bar
          status    released
                    ^^^^^^^^ missing-yield: `fruit-bar` is released without a number of pieces
          centre    42.0 g   fruit-dough
          loss      4 % of centre
          shelf     6 weeks at 15-18 °C
        formula fruit-dough
          version   1 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        """);
  }

  @Test
  void mendsMarksAReleasedProductWithoutPieces() {
    missingYield.checkFirstFix("Add `make 22 pieces`", """
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
          loss      4 % of centre
          shelf     6 weeks at 15-18 °C
        formula fruit-dough
          version   1 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        """, """
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
          loss      4 % of centre
          shelf     6 weeks at 15-18 °C
          make      22 pieces
        formula fruit-dough
          version   1 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        """);
  }

  @Test
  void takesTheBatchWhereNothingBoilsAway() {
    missingYield.check("""
        formula fruit-dough
          version   1 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        """);
  }

  @Test
  void takesPiecesForAYield() {
    missingYield.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
          makes     18 pieces of 42 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void leavesABenchFormulaAlone() {
    missingYield.check("""
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
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void marksAReleasedProductWhoseCentreIsUnknown() {
    missingYield.check("""
        product fruit-bar
          status    released
                    ^^^^^^^^ missing-yield: `fruit-bar` is released without a number of pieces
          centre    42.0 g   fruit-mass
          loss      4 % of centre
        """);
  }

  @Test
  void offersNothingAsMarksAReleasedProductWhoseCentreIsUnknown() {
    missingYield.checkNoFix("""
        product fruit-bar
          status    released
          centre    42.0 g   fruit-mass
          loss      4 % of centre
        """);
  }
}
