package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class CommaInNumberTest {

  private final RuleFixture commaInNumber = RuleFixture.of(new CommaInNumber());

  @Test
  void tellsBothReadingsOfAThousand() {
    commaInNumber.check("""
        formula syrup
          batch 1,200 g
                ^^^^^ comma-in-number: `1,200` is 1200 or 1.2
        """);
  }

  @Test
  void tellsTheOnlyReadingOfADecimalComma() {
    commaInNumber.check("""
        formula syrup
        stage pan
          36,50 % white-sugar
          ^^^^^ comma-in-number: `36,50` has a comma; a figure has a point and no thousands mark
        """);
  }

  @Test
  void looksAtRangesTolerancesAndFacts() {
    commaInNumber.check("""
        ingredient house-gum
          use 0,1-0,5 % of liquid
              ^^^^^^^ comma-in-number: `0,1-0,5` has a comma; a figure has a point and no thousands mark
        formula syrup
          expect yield 88 % +- 1,5
                               ^^^ comma-in-number: `1,5` has a comma; a figure has a point and no thousands mark
        """);
  }

  @Test
  void staysQuietAboutCommasBetweenFigures() {
    commaInNumber.check("""
        ingredient house-sugar
          contains 0.5 % water, 99.5 % sucrose
        formula syrup
          note "1,200 g"   # 1,200 g
        """);
  }

  @Test
  void offersThousandsFirstForAWeight() {
    commaInNumber.checkFirstFix("Write `1200 g`", batch("1,200 g"), batch("1200 g"));
    commaInNumber.checkFix("Write `1.2 g`", batch("1,200 g"), batch("1.2 g"));
    commaInNumber.checkFix("Write `12 g`", batch("12,000 g"), batch("12 g"));
  }

  @Test
  void offersThePointFirstForAPercentage() {
    commaInNumber.checkFirstFix("Write `1.25 %`", batch("1,250 %"), batch("1.25 %"));
    commaInNumber.checkFix("Write `1250 %`", batch("1,250 %"), batch("1250 %"));
  }

  @Test
  void readsWhatCanBeReadInOneWayOnly() {
    commaInNumber.checkFix("Write `36.50 %`", batch("36,50 %"), batch("36.50 %"));
    commaInNumber.checkFix("Write `0.5 %`", batch(",5 %"), batch("0.5 %"));
    commaInNumber.checkFix("Write `1200000 g`", batch("1,200,000 g"), batch("1200000 g"));
    commaInNumber.checkFix("Write `1200.5 g`", batch("1,200.5 g"), batch("1200.5 g"));
    commaInNumber.checkFix("Write `1200.5 g`", batch("1.200,5 g"), batch("1200.5 g"));
    commaInNumber.checkFix("Write `0.1-0.5 %`", batch("0,1-0,5 %"), batch("0.1-0.5 %"));
    commaInNumber.checkFix("Write `1200-1500 g`", batch("1,200-1,500 g"), batch("1200-1500 g"));
    commaInNumber.checkFix("Write `1.2-1.5 g`", batch("1,200-1,500 g"), batch("1.2-1.5 g"));
  }

  private static String batch(String weight) {
    return "formula syrup\n  batch " + weight + "\n";
  }
}
