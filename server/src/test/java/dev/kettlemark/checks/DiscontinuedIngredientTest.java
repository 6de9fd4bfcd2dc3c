package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class DiscontinuedIngredientTest {

  private final RuleFixture discontinuedIngredient = RuleFixture.of(new DiscontinuedIngredient());

  @Test
  void marksWhatCannotBeBought() {
    discontinuedIngredient.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          status    discontinued
        formula cold-syrup
          status    released
          percent   of charge
          batch     500 g
        stage bowl
          60 %      lime-honey
                    ^^^^^^^^^^ discontinued-ingredient: `lime-honey` is discontinued, and the formula is released
          40 %      water
          mix       lime-honey, water
        """);
  }

  @Test
  void leavesADraftAlone() {
    discontinuedIngredient.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          status    discontinued
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
  void leavesWhatIsSoldAlone() {
    discontinuedIngredient.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        formula cold-syrup
          status    released
          percent   of charge
          batch     500 g
        stage bowl
          60 %      lime-honey
          40 %      water
          mix       lime-honey, water
        """);
  }
}
