package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class NegativeRestTest {

  private final RuleFixture negativeRest = RuleFixture.of(new NegativeRest());

  @Test
  void marksARestBelowNothing() {
    negativeRest.check("""
        formula mix
        stage mix
          60.00 % date-paste
          30.00 % almond-flour
          11.30 % cocoa-powder
          q.s. water
          ^^^^ negative-rest: the rest comes out at -1.30 %, since the other lines add up to 101.30 %
        """);
  }

  @Test
  void countsLinesThatHangOnTheRest() {
    negativeRest.check("""
        formula mix
        stage mix
          60.00 % date-paste
          41.00 % white-sugar
          10.00 % of water sea-salt
          q.s. water
          ^^^^ negative-rest: the rest comes out at -0.91 %, since the other lines add up to 100.91 %
        """);
  }

  @Test
  void staysQuietAboutSomeRestAndNone() {
    negativeRest.check("""
        formula mix
        stage mix
          60.00 % date-paste
          30.00 % almond-flour
          q.s. water
        formula full-mix
        stage mix
          60.00 % date-paste
          40.00 % almond-flour
          q.s. water
        """);
  }

  @Test
  void tellsAVariantThatTakesMoreThanItsParentLeaves() {
    negativeRest.check("""
        formula mix
        stage mix
          60.00 % date-paste
          39.00 % almond-flour
          q.s. water
        variant mix-two of mix
                           ^^^ negative-rest: the rest comes out at -1.00 %, since the other lines add up to 101.00 %
          add 2.00 % cocoa-powder in mix
        """);
  }

  @Test
  void takesTheExcessOffTheLargestSugar() {
    negativeRest.checkFirstFix("Take 1.30 % off `white-sugar`", """
        formula mix
        stage mix
          30.00 % white-sugar
          60.00 % almond-flour
          11.30 % cocoa-powder
          q.s.    water
        """, """
        formula mix
        stage mix
          28.70 % white-sugar
          60.00 % almond-flour
          11.30 % cocoa-powder
          q.s.    water
        """);
  }

  @Test
  void takesTheExcessOffTheLargestLine() {
    negativeRest.checkFix("Take 1.30 % off `almond-flour`", """
        formula mix
        stage mix
          30.00 % white-sugar
          60.00 % almond-flour
          11.30 % cocoa-powder
          q.s.    water
        """, """
        formula mix
        stage mix
          30.00 % white-sugar
          58.70 % almond-flour
          11.30 % cocoa-powder
          q.s.    water
        """);
  }
}
