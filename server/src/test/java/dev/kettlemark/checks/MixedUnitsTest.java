package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MixedUnitsTest {

  private final RuleFixture mixedUnits = RuleFixture.of(new MixedUnits());

  @Test
  void marksWeightsAndVolumesAmongPercentages() {
    mixedUnits.check("""
        formula syrup
          batch 1000 g
        stage pan
          63.00 % white-sugar
          120 g glucose-syrup-42
          ^^^^^ mixed-units: 120 g of `glucose-syrup-42` stands among percentages
          50 mL water
          ^^^^^ mixed-units: 50 mL of `water` stands among percentages
        """);
  }

  @Test
  void staysQuietInAFormulaByWeight() {
    mixedUnits.check("""
        formula syrup
        stage pan
          630 g white-sugar
          120 g glucose-syrup-42
          50 mL water
        """);
  }

  @Test
  void leavesCountsAlone() {
    mixedUnits.check("""
        formula syrup
          batch 1000 g
        stage pan
          q.s. water
          60.00 % white-sugar
          2 each vanilla-pod
        """);
  }

  @Test
  void writesThePercentageOfTheBatch() {
    mixedUnits.checkFix("Write `12.00 %`", """
        formula syrup
          batch 1000 g
        stage pan
          63.00 %     white-sugar
          120 g       glucose-syrup-42
          25.00 %     water
        """, """
        formula syrup
          batch 1000 g
        stage pan
          63.00 %     white-sugar
          12.00 %     glucose-syrup-42
          25.00 %     water
        """);
  }

  @Test
  void writesAllPercentagesAtOnce() {
    mixedUnits.checkFirstFinding("Write all 2 as percentages", """
        formula syrup
          batch 500 g
        stage pan
          50.00 %     white-sugar
          1 g         sea-salt
          249 g       water
        """, """
        formula syrup
          batch 500 g
        stage pan
          50.00 %     white-sugar
          0.20 %      sea-salt
          49.80 %     water
        """);
  }

  @Test
  void offersNothingWithoutABatch() {
    mixedUnits.checkNoFix("""
        formula syrup
        stage pan
          63.00 %     white-sugar
          120 g       glucose-syrup-42
        """);
  }

  @Test
  void marksTheOwnLineOfAVariantOnly() {
    mixedUnits.check("""
        formula syrup
          batch 1000 g
        stage pan
          63.00 % white-sugar
          120 g glucose-syrup-42
          ^^^^^ mixed-units: 120 g of `glucose-syrup-42` stands among percentages
          q.s. water
        variant syrup-two of syrup
          add 2 g sea-salt in pan
              ^^^ mixed-units: 2 g of `sea-salt` stands among percentages
        """);
  }
}
