package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class CoatBasisOfSisterTest {

  private final RuleFixture coatBasisOfSister = RuleFixture.of(new CoatBasisOfSister());

  @Test
  void marksTheSameFigureOfAnotherBasis() {
    coatBasisOfSister.check("""
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of centre couverture-dark-62
               ^^^^ coat-basis-of-sister: 28 % of centre here, and of finished on `dome`
        product dome
          centre 12 g paste
          coat 28 % of finished couverture-milk-38
        """);
  }

  @Test
  void leavesOtherFiguresAlone() {
    coatBasisOfSister.check("""
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 20 % of centre couverture-dark-62
        product dome
          centre 12 g paste
          coat 28 % of finished couverture-milk-38
        """);
  }

  @Test
  void leavesTheSameBasisAlone() {
    coatBasisOfSister.check("""
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of centre couverture-dark-62
        product dome
          centre 12 g paste
          coat 28 % of centre couverture-milk-38
        """);
  }

  /** By hand: 0.28 / 1.28 = 21.875 %. */
  @Test
  void writesAsManyGrams() {
    coatBasisOfSister.checkFix("Write `21.88 % of finished`, as many grams", """
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of centre couverture-dark-62
        product dome
          centre 12 g paste
          coat 28 % of finished couverture-milk-38
        """, """
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 21.88 % of finished couverture-dark-62
        product dome
          centre 12 g paste
          coat 28 % of finished couverture-milk-38
        """);
  }
}
