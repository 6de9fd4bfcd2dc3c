package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnknownIngredientTest {

  private final RuleFixture unknownIngredient = RuleFixture.of(new UnknownIngredient());

  @Test
  void marksAnAmountOfSomethingUnknown() {
    unknownIngredient.check("""
        formula base
        stage base
          55 %    hazelnut-flower
                  ^^^^^^^^^^^^^^^ unknown-ingredient: `hazelnut-flower` is described nowhere; did you mean `hazelnut-flour`?
          45 %    icing-sugar
        """);
  }

  @Test
  void knowsOtherFormulasAndFiles() {
    unknownIngredient.check("""
        formula base
        stage base
          55 %    filling
          45 %    house-sugar
        --- other.kettle
        formula filling
        stage paste
          100 %   almond-paste

        ingredient house-sugar
        """);
  }

  @Test
  void looksAtThePartsOfAProduct() {
    unknownIngredient.check("""
        product dome
          centre  12 g zzyzx-centre
                       ^^^^^^^^^^^^ unknown-ingredient: `zzyzx-centre` is described nowhere
          coat    24 % of finished couverture-dark-62
        """);
  }

  @Test
  void looksAtWhatAVariantPutsIn() {
    unknownIngredient.check("""
        formula base
        stage base
          100 %   icing-sugar

        variant other of base
          replace icing-sugar by 100 % zzyzx-sugar
                                       ^^^^^^^^^^^ unknown-ingredient: `zzyzx-sugar` is described nowhere
          add     1 % qqq-salt in base
                      ^^^^^^^^ unknown-ingredient: `qqq-salt` is described nowhere
        """);
  }

  @Test
  void leavesAMissingParentToItsOwnRule() {
    unknownIngredient.check("""
        variant other of nothing-here
          batch   100 g
        """);
  }

  @Test
  void writesTheNearestNameThroughout() {
    unknownIngredient.checkFix("Write `hazelnut-flour`", """
        formula base
        stage base
          55 %    hazelnut-flower
          45 %    icing-sugar
          blend   hazelnut-flower, icing-sugar
        """, """
        formula base
        stage base
          55 %    hazelnut-flour
          45 %    icing-sugar
          blend   hazelnut-flour, icing-sugar
        """);
  }

  @Test
  void describesItBehindTheSection() {
    unknownIngredient.checkFix("Describe `moon-sugar`", """
        formula base
        stage base
          100 %   moon-sugar

        formula other
        """, """
        formula base
        stage base
          100 %   moon-sugar

        ingredient moon-sugar
          note      \"Role, composition, source and allergens are still to be stated.\"

        formula other
        """);
  }
}
