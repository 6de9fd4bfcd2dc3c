package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class BarePointTest {

  private final RuleFixture barePoint = RuleFixture.of(new BarePoint());

  @Test
  void marksAFigureThatStartsWithItsPoint() {
    barePoint.check("""
        formula syrup
          expect yield 88 % +- .5
                               ^^ bare-point: `.5` has no figure before its point
        stage pan
          .5 % sea-salt
          ^^ bare-point: `.5` has no figure before its point
        """);
  }

  @Test
  void staysQuietAboutNumbersThatCanBeRead() {
    barePoint.check("""
        formula syrup
          version 3 on 2026-01-08
          expect yield 88 % +- 2.5
        stage pan
          0.5 % sea-salt
          part 1/3 of foam
          set for 12 h at 18-20 °C
          cool to −5 °C
        """);
  }

  @Test
  void leavesOtherMistakesOfNumbersToOthers() {
    barePoint.check("""
        formula syrup
        stage pan
          1,5 % sea-salt
          1.2.3 % caster-sugar
          ,5 % citric-acid
        """);
  }

  @Test
  void writesTheZero() {
    barePoint.checkFix("Write `0.5`", salt(".5 %"), salt("0.5 %"));
    barePoint.checkFix("Write `0.1-0.5`", salt(".1-.5 %"), salt("0.1-0.5 %"));
    barePoint.checkFix("Write `-0.5`", salt("-.5 %"), salt("-0.5 %"));
  }

  @Test
  void offersNothingWhereAZeroDoesNotHelp() {
    barePoint.checkNoFix(salt("." + "5".repeat(30) + " %"));
  }

  private static String salt(String amount) {
    return "formula syrup\nstage pan\n  " + amount + " sea-salt\n";
  }
}
