package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class GelatineWithoutBloomTest {

  private final RuleFixture gelatineWithoutBloom = RuleFixture.of(new GelatineWithoutBloom());

  @Test
  void marksAGelatine() {
    gelatineWithoutBloom.check("""
        ingredient leaf-gelatine
                   ^^^^^^^^^^^^^ gelatine-without-bloom: `leaf-gelatine` has no `bloom`
          role gelling
          form sheet
        """);
  }

  @Test
  void knowsItByItsLabel() {
    gelatineWithoutBloom.check("""
        ingredient silver-leaf
                   ^^^^^^^^^^^ gelatine-without-bloom: `silver-leaf` has no `bloom`
          role gelling
          label "Gelatin"
        """);
  }

  @Test
  void leavesOthersAlone() {
    gelatineWithoutBloom.check("""
        ingredient leaf-gelatine
          role gelling
          form sheet
          bloom 160
        ingredient sea-agar
          role gelling
          form sheet
        ingredient vegan-gelatine
          role gelling
          form sheet
          suits vegan, vegetarian
        ingredient gelatine-sweets
          role inclusion
        """);
  }

  @Test
  void addsTheGradeOfTheName() {
    gelatineWithoutBloom.checkFix("Add `bloom 180`", """
        ingredient gelatine-180
          role gelling
          form sheet
        """, """
        ingredient gelatine-180
          role gelling
          form sheet
          bloom 180
        """);
  }

  @Test
  void addsAUsualGrade() {
    gelatineWithoutBloom.checkFix("Add `bloom 200`", """
        ingredient leaf-gelatine
          role gelling
          form sheet
        """, """
        ingredient leaf-gelatine
          role gelling
          form sheet
          bloom 200
        """);
  }
}
