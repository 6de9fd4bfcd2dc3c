package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TakenTwiceTest {

  private final RuleFixture takenTwice = RuleFixture.of(new TakenTwice());

  @Test
  void marksTheTakeThatPassesTheWhole() {
    takenTwice.check("""
        formula brittle
        stage syrup
          100 %   white-sugar
        stage one
          all of  syrup
        stage two
          all of  syrup
          ^^^^^^^^^^^^^ taken-twice: the parts taken of `syrup` add up to 200 %
        """);
  }

  @Test
  void addsPartsExactly() {
    takenTwice.check("""
        formula brittle
        stage syrup
          100 %   white-sugar
        stage one
          part 1/3 of syrup
        stage two
          part 1/3 of syrup
        stage three
          part 1/3 of syrup
        """);
  }

  @Test
  void marksPartsThatAddUpToMore() {
    takenTwice.check("""
        formula brittle
        stage syrup
          100 %   white-sugar
        stage one
          part 1/2 of syrup
        stage two
          part 2/3 of syrup
          ^^^^^^^^^^^^^^^^^ taken-twice: the parts taken of `syrup` add up to 116.7 %
        """);
  }

  @Test
  void countsTheTakesThatAVariantAdds() {
    takenTwice.check("""
        formula brittle
        stage syrup
          100 %   white-sugar
        stage one
          all of  syrup

        variant double of brittle
        stage two
          all of  syrup
          ^^^^^^^^^^^^^ taken-twice: the parts taken of `syrup` add up to 200 %
        """);
  }

  @Test
  void sharesItEvenly() {
    takenTwice.checkFix("Take `part 1/2 of` each time", """
        formula brittle
        stage syrup
          100 %               white-sugar
        stage one
          all of              syrup
        stage two
          all of              syrup
        """, """
        formula brittle
        stage syrup
          100 %               white-sugar
        stage one
          part 1/2 of         syrup
        stage two
          part 1/2 of         syrup
        """);
  }

  @Test
  void takesTheRest() {
    takenTwice.checkFix("Take the rest, `part 1/3 of`", """
        formula brittle
        stage syrup
          100 %   white-sugar
        stage one
          part 2/3 of syrup
        stage two
          all of  syrup
        """, """
        formula brittle
        stage syrup
          100 %   white-sugar
        stage one
          part 2/3 of syrup
        stage two
          part 1/3 of syrup
        """);
  }
}
