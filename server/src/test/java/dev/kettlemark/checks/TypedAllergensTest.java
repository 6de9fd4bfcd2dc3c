package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TypedAllergensTest {

  private final RuleFixture typedAllergens = RuleFixture.of(new TypedAllergens());

  @Test
  void findsWhatTheTypedWordsLeaveOut() {
    String text = """
        formula foam
          percent of charge
          note "Allergens: egg"
        stage bowl
          50 % soy-whipping-protein
          50 % egg-white-powder
          mix
        """;
    typedAllergens.check(text.replace(
        "egg\"\n",
        "egg\"\n"
            + "       ^^^^^^^^^^^^^^^^ typed-allergens: the typed allergens leave out soybeans\n"));
    typedAllergens.checkSeverity(Severity.ERROR, text);
  }

  @Test
  void refusesWhatIsTypedAndRight() {
    typedAllergens.check("""
        formula foam
          percent of charge
          note "Contains soya."
               ^^^^^^^^^^^^^^^^ typed-allergens: allergens are computed and not typed
        stage bowl
          100 % soy-whipping-protein
          mix
        """);
  }

  @Test
  void findsATraceThatIsContained() {
    typedAllergens.check("""
        product bite
          centre 8 g almond-paste
          may-contain almond, milk
                      ^^^^^^ typed-allergens: `almond` is no trace: `almond-paste` holds it
        """);
  }

  @Test
  void staysQuietOnOtherNotes() {
    typedAllergens.check("""
        formula foam
          percent of charge
          note "The almonds go in warm, or the egg foam falls."
          note "Contains the foam for ten minutes."
        stage bowl
          100 % almond
          mix
        """);
  }

  @Test
  void removesTheStatement() {
    typedAllergens.checkFix("Remove the statement", """
        formula foam
          percent of charge
          note "Contains soya."
        stage bowl
          100 % soy-whipping-protein
          mix
        """, """
        formula foam
          percent of charge
        stage bowl
          100 % soy-whipping-protein
          mix
        """);
  }

  @Test
  void removesTheTrace() {
    typedAllergens.checkFix("Remove `may-contain almond`", """
        product bite
          centre 8 g almond-paste
          may-contain almond, milk
        """, """
        product bite
          centre 8 g almond-paste
          may-contain milk
        """);
  }
}
