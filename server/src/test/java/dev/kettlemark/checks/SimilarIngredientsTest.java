package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class SimilarIngredientsTest {

  private final RuleFixture similarIngredients = RuleFixture.of(new SimilarIngredients());

  @Test
  void marksOneThingUnderTwoSpellings() {
    similarIngredients.check("""
        ingredient lime-honey
                   ^^^^^^^^^^ similar-ingredients: `lime-honey` and `limehoney` look like one thing
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        ingredient limehoney
                   ^^^^^^^^^ similar-ingredients: `limehoney` and `lime-honey` look like one thing
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        """);
  }

  @Test
  void marksASpellingOfThePantry() {
    similarIngredients.check("""
        ingredient caster-sugars
                   ^^^^^^^^^^^^^ similar-ingredients: `caster-sugars` and `caster-sugar` look like one thing
          role      sweetening
          contains  100 % sucrose
        """);
  }

  @Test
  void tellsGradesApart() {
    similarIngredients.check("""
        ingredient pectin-hm-slowly
          role      gelling
        ingredient pectin-lm-slowly
          role      gelling
        ingredient gelatine-201
          role      gelling
        """);
  }

  @Test
  void tellsApartWhatIsMadeOfOtherThings() {
    similarIngredients.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        ingredient lime-honeys
          role      sweetening
          contains  90 % water, 10 % other
        """);
  }

  @Test
  void tellsApartWhatHasAnotherRole() {
    similarIngredients.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
        ingredient lime-honeys
          role      colour
          contains  18 % water, 74 % fructose, 8 % other
        """);
  }
}
