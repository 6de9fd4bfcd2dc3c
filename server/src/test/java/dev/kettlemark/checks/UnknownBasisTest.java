package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnknownBasisTest {

  private final RuleFixture unknownBasis = RuleFixture.of(new UnknownBasis());

  @Test
  void marksABasisThatNobodyDeclared() {
    unknownBasis.check("""
        formula sauce
        stage sauce
          0.40 % of liquid guar-gum
                    ^^^^^^ unknown-basis: the formula knows no basis `liquid`
          q.s. water
        """);
  }

  @Test
  void marksTheBasisOfTheWholeFormula() {
    unknownBasis.check("""
        formula sauce
          percent of flour
                     ^^^^^ unknown-basis: the formula knows no basis `flour`
        stage sauce
          50.00 % water
        """);
  }

  @Test
  void staysQuietAboutBasesStagesAndIngredients() {
    unknownBasis.check("""
        formula sauce
          percent of charge
          basis liquid = water, raspberry-puree
        stage sauce
          0.40 % of liquid guar-gum
          2.00 % of raspberry-puree caster-sugar
          1.00 % of sauce citric-acid
          1.00 % of finished sea-salt
          40.00 % raspberry-puree
          q.s. water
        """);
  }

  @Test
  void marksAVariantThatDropsWhatItsParentIsSharesOf() {
    unknownBasis.check("""
        formula sauce
        stage sauce
          2.00 % of honey citric-acid
          40.00 % honey
          q.s. water
        variant sauce-two of sauce
                             ^^^^^ unknown-basis: the formula knows no basis `honey`
          drop honey
        """);
  }

  @Test
  void declaresTheLiquidsOfTheStage() {
    unknownBasis.checkFix("Add `basis liquid = raspberry-puree, water in sauce`", """
        formula sauce
          code      MK-1   # a remark
        stage sauce
          0.40 % of liquid guar-gum
          40.00 % raspberry-puree
          10.00 % water
        stage syrup
          40.00 % white-sugar
          9.60 % water
        """, """
        formula sauce
          code      MK-1   # a remark
          basis     liquid = raspberry-puree, water in sauce
        stage sauce
          0.40 % of liquid guar-gum
          40.00 % raspberry-puree
          10.00 % water
        stage syrup
          40.00 % white-sugar
          9.60 % water
        """);
  }

  @Test
  void declaresItBelowAHeadingWithoutFacts() {
    unknownBasis.checkFix("Add `basis liquid = water`", """
        formula sauce
        stage sauce
          0.40 % of liquid guar-gum
          q.s. water
        """, """
        formula sauce
          basis     liquid = water
        stage sauce
          0.40 % of liquid guar-gum
          q.s. water
        """);
  }

  @Test
  void offersTheNearestNameFirst() {
    unknownBasis.checkFirstFix("Write `of liquid`", """
        formula sauce
          basis liquid = water
        stage sauce
          0.40 % of liqiud guar-gum
          q.s. water
        """, """
        formula sauce
          basis liquid = water
        stage sauce
          0.40 % of liquid guar-gum
          q.s. water
        """);
  }

  @Test
  void keepsTheLineEndsOfTheText() {
    unknownBasis.checkFix(
        "Add `basis liquid = water`",
        "formula sauce\r\nstage sauce\r\n  0.40 % of liquid guar-gum\r\n  q.s. water\r\n",
        "formula sauce\r\n  basis     liquid = water\r\nstage sauce\r\n"
            + "  0.40 % of liquid guar-gum\r\n  q.s. water\r\n");
  }
}
