package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ScaledBoilTest {

  private final RuleFixture scaledBoil = RuleFixture.of(new ScaledBoil());

  @Test
  void tellsOfABoilFarLargerThanItsTrials() {
    scaledBoil.check("""
        formula syrup
          batch 40000 g
                ^^^^^^^ scaled-boil: this batch, 40 kg, is 40 times the largest trial, 1000 g
        stage pan
          60 % white-sugar
          40 % water
          cook to 120 °C
        trial T-1 of syrup on 2026-04-20
          batch 1000 g
        """);
  }

  @Test
  void isContentWithFiveTimes() {
    scaledBoil.check("""
        formula syrup
          batch 5000 g
        stage pan
          60 % white-sugar
          40 % water
          cook to 120 °C
        trial T-1 of syrup on 2026-04-20
          batch 1000 g
        """);
  }

  @Test
  void leavesWhatDoesNotBoilAlone() {
    scaledBoil.check("""
        formula syrup
          batch 40000 g
        stage pan
          60 % white-sugar
          40 % water
          mix for 2 min
        trial T-1 of syrup on 2026-04-20
          batch 1000 g
        """);
  }

  @Test
  void holdsAProductAgainstTheBatchOfItsFormula() {
    scaledBoil.check("""
        formula syrup
          batch 1000 g
        stage pan
          60 % white-sugar
          40 % water
          mix  for 2 min
          boil to 105 °C
        product drop
          centre 10 g syrup
          make 2000 pieces
               ^^^^^^^^^^^ scaled-boil: the batch of `syrup`, 23.385 kg, is 23.4 times the batch of the formula, 1000 g
        """);
  }
}
