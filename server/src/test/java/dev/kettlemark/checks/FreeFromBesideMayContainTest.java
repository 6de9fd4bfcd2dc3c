package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class FreeFromBesideMayContainTest {

  private final RuleFixture freeFrom = RuleFixture.of(new FreeFromBesideMayContain());

  @Test
  void findsTheTracesOfACoat() {
    freeFrom.check("""
        formula centre
          percent of charge
        stage bowl
          100 % date-paste
          mix
        product bite
          centre 8 g centre
          coat 30 % of finished couverture-dark-62
          claim milk-free, vegan
                ^^^^^^^^^ free-from-beside-may-contain: `milk-free` cannot stand: `couverture-dark-62` may contain milk
        """);
  }

  @Test
  void findsTheProductsOwnWarning() {
    freeFrom.check("""
        product bite
          centre 8 g date-paste
          may-contain peanut
          claim nut-free
                ^^^^^^^^ free-from-beside-may-contain: `nut-free` cannot stand: the product itself may contain peanut
        """);
  }

  @Test
  void leavesGlutenToAnalysis() {
    freeFrom.check("""
        product bite
          centre 8 g date-paste
          may-contain wheat
          claim gluten-free
        """);
  }

  @Test
  void takesTheClaimBack() {
    freeFrom.checkFix("Remove `claim nut-free`", """
        product bite
          centre 8 g date-paste
          may-contain peanut
          claim nut-free
        """, """
        product bite
          centre 8 g date-paste
          may-contain peanut
        """);
  }
}
