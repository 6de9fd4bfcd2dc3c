package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class LessSugarWithoutReferenceTest {

  private final RuleFixture lessSugar = RuleFixture.of(new LessSugarWithoutReference());

  @Test
  void asksLessThanWhat() {
    lessSugar.check("""
        formula light
          percent of charge
          claim less-sugar
                ^^^^^^^^^^ less-sugar-without-reference: `less-sugar`: it does not say less than what
        stage bowl
          100 % apple-puree
          mix
        """);
  }

  @Test
  void findsANameThatNobodyDescribed() {
    lessSugar.check("""
        formula light
          percent of charge
          claim less-sugar of moon-cake
                ^^^^^^^^^^ less-sugar-without-reference: `less-sugar`: nobody has described `moon-cake`
        stage bowl
          100 % apple-puree
          mix
        """);
  }

  @Test
  void staysQuietBesideAName() {
    lessSugar.check("""
        formula light
          percent of charge
          claim less-sugar of honey
        stage bowl
          100 % apple-puree
          mix
        """);
  }

  @Test
  void comparesAVariantWithItsParent() {
    lessSugar.checkFirstFix("Compare with `sweet`", """
        formula sweet
          percent of charge
        stage bowl
          100 % white-sugar
          mix
        variant light of sweet
          claim less-sugar
          replace white-sugar by 100 % isomalt
        """, """
        formula sweet
          percent of charge
        stage bowl
          100 % white-sugar
          mix
        variant light of sweet
          claim less-sugar of sweet
          replace white-sugar by 100 % isomalt
        """);
  }
}
