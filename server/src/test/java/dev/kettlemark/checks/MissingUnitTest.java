package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MissingUnitTest {

  private final RuleFixture missingUnit = RuleFixture.of(new MissingUnit());

  @Test
  void marksTheFigureThatHasNoUnit() {
    missingUnit.check("""
        formula syrup
        stage pan
          60.00 white-sugar
          ^^^^^ missing-unit: 60.00 of what unit
          40.00 % water
        """);
  }

  @Test
  void knowsAUnitInTheWrongCapitals() {
    missingUnit.check("""
        formula syrup
        stage pan
          1.2 KG white-sugar
              ^^ missing-unit: the unit `KG` is written `kg`
        """);
  }

  @Test
  void offersTheUnitOfTheOtherLinesFirst() {
    missingUnit.checkFix("Add `%`", """
        formula syrup
        stage pan
          60.00   white-sugar
          40.00 % water
        """, """
        formula syrup
        stage pan
          60.00 %   white-sugar
          40.00 % water
        """);
  }

  @Test
  void writesTheUnitInItsOwnCapitals() {
    missingUnit.checkFix("Write `kg`", """
        formula syrup
        stage pan
          1.2 KG white-sugar
        """, """
        formula syrup
        stage pan
          1.2 kg white-sugar
        """);
  }

  @Test
  void marksFactsAndChangesThatAreAmounts() {
    missingUnit.check("""
        formula syrup
          batch 1200
                ^^^^ missing-unit: 1200 of what unit
        variant syrup-two of syrup
          add 0.30 guar-gum in pan
              ^^^^ missing-unit: 0.30 of what unit
          replace honey by 14.00 agave-syrup
                           ^^^^^ missing-unit: 14.00 of what unit
        product bite
          coat 24 of finished couverture-dark-62
               ^^ missing-unit: 24 of what unit
          make 96
               ^^ missing-unit: 96 of what unit
        """);
  }

  @Test
  void staysQuietAboutFactsThatAreNoAmounts() {
    missingUnit.check("""
        formula syrup
          version 3 on 2026-01-08
        trial T-1 of syrup
          scored 8 chew
        """);
  }
}
