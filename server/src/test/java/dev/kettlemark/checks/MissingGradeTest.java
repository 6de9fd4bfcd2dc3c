package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MissingGradeTest {

  private final RuleFixture missingGrade = RuleFixture.of(new MissingGrade());

  @Test
  void marksGelatineByItsLabel() {
    missingGrade.check("""
        ingredient setting-leaf
                   ^^^^^^^^^^^^ missing-grade: `setting-leaf` does not give its gel strength, such as `bloom 200`
          form      sheet
          label     "gelatine"
        """);
  }

  @Test
  void offersNothingAsMarksGelatineByItsLabel() {
    missingGrade.checkNoFix("""
        ingredient setting-leaf
          form      sheet
          label     "gelatine"
        """);
  }

  @Test
  void leavesWhatGelsToTheRuleOfGelatine() {
    missingGrade.check("""
        ingredient setting-leaf
          role      gelling
          form      sheet
          label     "gelatine"
        """);
  }

  @Test
  void takesTheGradeFromTheName() {
    missingGrade.check("""
        ingredient gelatine-180
                   ^^^^^^^^^^^^ missing-grade: `gelatine-180` does not give its gel strength, such as `bloom 200`
          form      powder
        """);
  }

  @Test
  void mendsTakesTheGradeFromTheName() {
    missingGrade.checkFirstFix("Add `bloom 180`, as its name says", """
        ingredient gelatine-180
          form      powder
        """, """
        ingredient gelatine-180
          form      powder
          bloom     180
        """);
  }

  @Test
  void marksAGlucoseSyrup() {
    missingGrade.check("""
        ingredient house-glucose-syrup-58
                   ^^^^^^^^^^^^^^^^^^^^^^ missing-grade: `house-glucose-syrup-58` does not give its dextrose equivalent, such as `DE 42`
          role      doctor
          form      syrup
        """);
  }

  @Test
  void mendsMarksAGlucoseSyrup() {
    missingGrade.checkFirstFix("Add `DE 58`, as its name says", """
        ingredient house-glucose-syrup-58
          role      doctor
          form      syrup
        """, """
        ingredient house-glucose-syrup-58
          role      doctor
          form      syrup
          DE        58
        """);
  }

  @Test
  void marksACouvertureWithoutFat() {
    missingGrade.check("""
        ingredient couverture-70
                   ^^^^^^^^^^^^^ missing-grade: `couverture-70` does not give its fat behind `contains`
          role      coating
          contains  1 % water, 29 % sucrose, 70 % other
        """);
  }

  @Test
  void offersNothingAsMarksACouvertureWithoutFat() {
    missingGrade.checkNoFix("""
        ingredient couverture-70
          role      coating
          contains  1 % water, 29 % sucrose, 70 % other
        """);
  }

  @Test
  void staysQuietWithTheGrade() {
    missingGrade.check("""
        ingredient gelatine-180
          role      gelling
          bloom     180
        ingredient glucose-syrup-58
          role      doctor
          DE        58
        ingredient cream-30
          role      dairy
          contains  64 % water, 30 % fat, 6 % other
        """);
  }

  @Test
  void doesNotTakeCreamOfTartarForCream() {
    missingGrade.check("""
        ingredient house-tartar
          label     "cream of tartar"
        ingredient cream-of-tartar-two
          role      acidulant
          contains  100 % acid
        ingredient milk-caramel
          label     "sugar, glucose syrup, milk"
        ingredient creamed-honey
          role      sweetening
        """);
  }
}
