package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MissingPercentBasisTest {

  private final RuleFixture missingPercentBasis = RuleFixture.of(new MissingPercentBasis());

  @Test
  void marksACookedFormulaThatDoesNotSay() {
    missingPercentBasis.check("""
        formula syrup
                ^^^^^ missing-percent-basis: no line says what the percentages are of, and `cook` drives water off
        stage pan
          75.00 % white-sugar
          25.00 % water
          cook to 118 °C
        """);
  }

  @Test
  void marksABoilWithoutALid() {
    missingPercentBasis.check("""
        formula syrup
                ^^^^^ missing-percent-basis: no line says what the percentages are of, and `boil` drives water off
        stage pan
          75.00 % white-sugar
          25.00 % water
          boil for 3 min
        """);
  }

  @Test
  void staysQuietWhereItIsSaidOrNothingBoilsAway() {
    missingPercentBasis.check("""
        formula syrup
          percent of charge
        stage pan
          75.00 % white-sugar
          25.00 % water
          cook to 118 °C
        formula cold-syrup
        stage pan
          75.00 % white-sugar
          25.00 % water
          boil under lid for 3 min
        formula syrup-by-weight
        stage pan
          750 g white-sugar
          250 g water
          cook to 118 °C
        formula syrup-line-by-line
        stage pan
          75.00 % of charge white-sugar
          25.00 % of charge water
          cook to 118 °C
        """);
  }

  @Test
  void saysOfChargeAboveTheBatch() {
    missingPercentBasis.checkFirstFix("Add `percent of charge`", """
        formula syrup
          code      MK-1
          batch     1000 g
        stage pan
          75.00 % white-sugar
          25.00 % water
          cook to 118 °C
        """, """
        formula syrup
          code      MK-1
          percent   of charge
          batch     1000 g
        stage pan
          75.00 % white-sugar
          25.00 % water
          cook to 118 °C
        """);
  }

  @Test
  void saysOfFinishedBelowTheLastFact() {
    missingPercentBasis.checkFix("Add `percent of finished`", """
        formula syrup
          code      MK-1

        stage pan
          75.00 % white-sugar
          25.00 % water
          cook to 118 °C
        """, """
        formula syrup
          code      MK-1
          percent   of finished

        stage pan
          75.00 % white-sugar
          25.00 % water
          cook to 118 °C
        """);
  }
}
