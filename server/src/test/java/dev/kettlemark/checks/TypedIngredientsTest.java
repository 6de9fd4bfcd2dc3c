package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TypedIngredientsTest {

  private final RuleFixture typedIngredients = RuleFixture.of(new TypedIngredients());

  @Test
  void marksATypedList() {
    typedIngredients.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          note      "Ingredients: sugar, water, glucose syrup."
                    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ typed-ingredients: the list of ingredients is computed and not typed
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void mendsMarksATypedList() {
    typedIngredients.checkFirstFix("Remove the list", """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          note      "Ingredients: sugar, water, glucose syrup."
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """, """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void marksATypedListOnASheet() {
    typedIngredients.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
          note      "Ingredients: sugar, glucose syrup, water."
                    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ typed-ingredients: the list of ingredients is computed and not typed
        """);
  }

  @Test
  void mendsMarksATypedListOnASheet() {
    typedIngredients.checkFirstFix("Remove the list", """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
          note      "Ingredients: sugar, glucose syrup, water."
        """, """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
        """);
  }

  @Test
  void leavesARemarkAlone() {
    typedIngredients.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          note      "Ingredients must be warm, dry and sifted."
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }
}
