package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** A US teaspoon is 4.928922 mL (NIST SP 811, B.8); the pantry gives xanthan gum 0.65 g/mL as poured. */
class SpoonedGumTest {

  private final RuleFixture spoonedGum = RuleFixture.of(new SpoonedGum());

  @Test
  void marksASpoonOfGum() {
    spoonedGum.check("""
        formula sauce
        stage sauce
          300 g raspberry-puree
          1 tsp xanthan-gum
          ^^^^^ spooned-gum: 1 tsp of `xanthan-gum`, about 3.20 g
        """);
  }

  @Test
  void goesByTheUseRangeWhereTheDensityIsNotKnown() {
    spoonedGum.check("""
        ingredient house-gum
          role thickening
          form powder
          contains 90 % fibre, 10 % water
          use 0.1-0.5 % of liquid
        formula sauce
        stage sauce
          300 g raspberry-puree
          1 tsp house-gum
          ^^^^^ spooned-gum: 1 tsp of `house-gum`
        """);
  }

  @Test
  void staysQuietAboutLiquidsCrystalsAndLargeDoses() {
    spoonedGum.check("""
        formula sauce
        stage sauce
          300 g raspberry-puree
          1 tsp vanilla-extract
          1 cup almond-flour
          1 g   xanthan-gum
        """);
  }

  @Test
  void weighsByTheDensity() {
    spoonedGum.checkFix("Weigh `3.20 g`", """
        formula sauce
        stage sauce
          300 g    raspberry-puree
          1 tsp    xanthan-gum
        """, """
        formula sauce
        stage sauce
          300 g    raspberry-puree
          3.20 g   xanthan-gum
        """);
  }

  @Test
  void weighsInPercentWhereTheFormulaDoes() {
    spoonedGum.checkFix("Weigh `0.32 %`", """
        formula sauce
          batch 1000 g
        stage sauce
          q.s.     raspberry-puree
          1 tsp    xanthan-gum
        """, """
        formula sauce
          batch 1000 g
        stage sauce
          q.s.     raspberry-puree
          0.32 %   xanthan-gum
        """);
  }

  @Test
  void leavesWhatAVariantTakesOverToItsParent() {
    spoonedGum.check("""
        formula sauce
        stage sauce
          300 g raspberry-puree
          1 tsp xanthan-gum
          ^^^^^ spooned-gum: 1 tsp of `xanthan-gum`, about 3.20 g
        variant sauce-two of sauce
          replace raspberry-puree by 300 g water
        """);
  }
}
