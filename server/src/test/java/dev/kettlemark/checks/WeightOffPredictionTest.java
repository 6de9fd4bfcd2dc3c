package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Three percent are common practice, no source; the predicted weight is the solids with the water of the boiling model. */
class WeightOffPredictionTest {

  private final RuleFixture weightOffPrediction = RuleFixture.of(new WeightOffPrediction());

  @Test
  void marksABatchThatWeighsTooMuch() {
    weightOffPrediction.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          measured  960 g    weight of syrup
                    ^^^^^ weight-off-prediction: weight of syrup: 960.0 g where 911.0 g are predicted, 5.4 % too much
        """);
  }

  @Test
  void marksAFinishedWeightAfterTheStatedLoss() {
    weightOffPrediction.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          makes     20 pieces of 40 g with 4 % loss
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          measured  700 g    finished
                    ^^^^^ weight-off-prediction: finished: 700.0 g where 874.5 g are predicted, 20.0 % short
        """);
  }

  @Test
  void staysQuietWithinThreePercent() {
    weightOffPrediction.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          measured  905 g    weight of syrup
          measured  925 g    weight of syrup
        """);
  }

  @Test
  void takesTheBatchOfTheTrial() {
    weightOffPrediction.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          batch     2000 g
          measured  1830 g   weight of syrup
        """);
  }

  @Test
  void leavesWhatCannotBeToAnotherRule() {
    weightOffPrediction.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          measured  1100 g   weight of syrup
          measured  600 g    weight of syrup
        """);
  }

  @Test
  void leavesAnOlderVersionAlone() {
    weightOffPrediction.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-02-01
          measured  960 g    weight of syrup
        """);
  }

  @Test
  void leavesAStageOfUnknownWeightAlone() {
    weightOffPrediction.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      moon-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          measured  960 g    weight of syrup
        """);
  }

  @Test
  void isAWarning() {
    weightOffPrediction.checkSeverity(Severity.WARNING, """
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          measured  960 g    weight of syrup
        """);
  }

  @Test
  void isOnlyWorthKnowingOfAChangedBatch() {
    weightOffPrediction.checkSeverity(Severity.INFORMATION, """
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          changed   "cooked less"
          measured  960 g    weight of syrup
        """);
  }
}
