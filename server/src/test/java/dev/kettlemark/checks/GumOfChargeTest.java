package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** The pantry gives xanthan gum 0.05-0.5 % of liquid (Phillips and Williams 2009, from memory). */
class GumOfChargeTest {

  @Test
  void leavesADryMixAlone() {
    RuleFixture.of(new GumOfCharge()).check("""
        formula gum-premix
          percent of charge
        stage bowl
          2.00 %  xanthan-gum
          98.00 % icing-sugar
          blend   xanthan-gum, icing-sugar
        """);
  }

  private final RuleFixture gumOfCharge = RuleFixture.of(new GumOfCharge());

  @Test
  void marksAGumThatItsDeclaredLiquidCannotCarry() {
    gumOfCharge.check("""
        formula base
          basis liquid = water in base
        stage base
          0.40 % xanthan-gum
          ^^^^^^ gum-of-charge: 0.40 % of charge is 8.00 % of `liquid` for `xanthan-gum`
          14.60 % caster-sugar
          5.00 % water
          80.00 % almond-paste
        """);
  }

  /** The gum brings 10 % of water of its own, by the pantry: 2.00 / (26.80 + 0.20) = 7.41 %. */
  @Test
  void takesAllWaterWhereNoLiquidIsDeclared() {
    gumOfCharge.check("""
        ingredient dry-sugar
          contains 100 % sucrose
        formula base
        stage base
          2.00 % xanthan-gum
          ^^^^^^ gum-of-charge: 2.00 % of charge is 7.41 % of all water for `xanthan-gum`
          71.20 % dry-sugar
          26.80 % water
        """);
  }

  @Test
  void staysQuietWhereTheDoseIsUsualOrOfTheLiquid() {
    gumOfCharge.check("""
        formula sauce
          basis liquid = water
        stage sauce
          0.30 % xanthan-gum
          10.00 % caster-sugar
          q.s. water
        formula base
          basis liquid = water in base
        stage base
          0.40 % of liquid xanthan-gum
          5.00 % water
          q.s. almond-paste
        """);
  }

  @Test
  void staysQuietUpToThreeTimesTheUsual() {
    gumOfCharge.check("""
        formula sauce
          basis liquid = water
        stage sauce
          0.75 % xanthan-gum
          50.00 % water
          q.s. caster-sugar
        """);
  }

  @Test
  void staysQuietAboutGumsDosedOfTheFinishedMass() {
    gumOfCharge.check("""
        formula jelly
          basis liquid = water
        stage jelly
          1.50 % agar
          5.00 % water
          q.s. white-sugar
        """);
  }

  @Test
  void writesTheDoseOfTheDeclaredLiquid() {
    gumOfCharge.checkFix("Write `0.40 % of liquid`", """
        formula base
          basis liquid = water in base
        stage base
           0.40 %             xanthan-gum
           5.00 %             water
          q.s.                almond-paste
        """, """
        formula base
          basis liquid = water in base
        stage base
           0.40 % of liquid   xanthan-gum
           5.00 %             water
          q.s.                almond-paste
        """);
  }

  @Test
  void declaresTheLiquidWhereNoneIs() {
    gumOfCharge.checkFix("Write `2.00 % of liquid`", """
        formula base
        stage base
          2.00 %  xanthan-gum
          26.80 %  water
          q.s.  icing-sugar
        """, """
        formula base
          basis     liquid = water
        stage base
          2.00 % of liquid  xanthan-gum
          26.80 %  water
          q.s.  icing-sugar
        """);
  }
}
