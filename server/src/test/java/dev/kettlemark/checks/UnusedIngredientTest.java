package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnusedIngredientTest {

  private final RuleFixture unusedIngredient = RuleFixture.of(new UnusedIngredient());

  @Test
  void marksWhatNothingUses() {
    unusedIngredient.check("""
        ingredient lime-honey
                   ^^^^^^^^^^ unused-ingredient: nothing uses `lime-honey`
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        formula cold-syrup
          percent   of charge
          batch     500 g
        stage bowl
          60 %      honey
          40 %      water
          mix       honey, water
        """);
  }

  @Test
  void staysQuietWhereAFormulaWeighsIt() {
    unusedIngredient.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        formula cold-syrup
          percent   of charge
          batch     500 g
        stage bowl
          60 %      lime-honey
          40 %      water
          mix       lime-honey, water
        """);
  }

  @Test
  void staysQuietWhereAVariantTakesIt() {
    unusedIngredient.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        formula cold-syrup
          percent   of charge
          batch     500 g
        stage bowl
          60 %      honey
          40 %      water
          mix       honey, water
        variant lime-syrup of cold-syrup
          replace   honey by 60 % lime-honey
        """);
  }

  @Test
  void staysQuietWhereAProductIsCoatedWithIt() {
    unusedIngredient.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        formula cold-syrup
          percent   of charge
          batch     500 g
        stage bowl
          60 %      honey
          40 %      water
          mix       honey, water
        product bite
          centre    9 g cold-syrup
          coat      20 % of finished lime-honey
        """);
  }

  @Test
  void staysQuietWhereAStepNamesIt() {
    unusedIngredient.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        formula cold-syrup
          percent   of charge
          batch     500 g
        stage bowl
          60 %      honey
          40 %      water
          mix       honey, water
          dust      bowl with lime-honey
        """);
  }

  @Test
  void leavesAPantryWithoutFormulasAlone() {
    unusedIngredient.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        """);
  }

  @Test
  void removesItAndNothingElse() {
    unusedIngredient.checkFix("Remove `lime-honey`", """
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other

        # What follows.
        formula cold-syrup
          percent   of charge
          batch     500 g
        stage bowl
          60 %      honey
          40 %      water
          mix       honey, water
        """, """


        # What follows.
        formula cold-syrup
          percent   of charge
          batch     500 g
        stage bowl
          60 %      honey
          40 %      water
          mix       honey, water
        """);
  }
}
