package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MissingCautionTest {

  private final RuleFixture missingCaution = RuleFixture.of(new MissingCaution());

  @Test
  void asksForBurnsAtTheHottestCook() {
    missingCaution.check("""
        formula toffee
          percent of charge
        stage pan
          70 % white-sugar
          30 % water
          cook to 110 °C
          cook to 150 °C
          ^^^^ missing-caution: no `caution hot-sugar`, and `cook` brings it to 150 °C
        """);
  }

  @Test
  void asksForInfantsAtTheHoney() {
    missingCaution.check("""
        formula mix
          percent of charge
        stage bowl
          70 % date-paste
          30 % honey
               ^^^^^ missing-caution: no `caution honey-infant`, and it holds `honey`
          mix
        product bite
          centre 8 g mix
          filling 2 g honey
                      ^^^^^ missing-caution: no `caution honey-infant`, and it holds `honey`
        """);
  }

  @Test
  void staysQuietWhereThePartCarriesIt() {
    missingCaution.check("""
        formula mix
          percent of charge
          caution honey-infant
        stage bowl
          70 % date-paste
          30 % honey
          mix
        product bite
          centre 8 g mix
        """);
  }

  /** The part is told at its own honey. */
  @Test
  void tellsAPartOnce() {
    missingCaution.check("""
        product bite
          centre 8 g mix
        formula mix
          percent of charge
        stage bowl
          70 % date-paste
          30 % honey
               ^^^^^ missing-caution: no `caution honey-infant`, and it holds `honey`
          mix
        """);
  }

  @Test
  void staysQuietBelowTheHeatThatBurns() {
    missingCaution.check("""
        formula syrup
          percent of charge
        stage pan
          50 % white-sugar
          50 % water
          boil under lid until dissolved
          cook to 104 °C
        """);
  }

  @Test
  void tellsInAVariantWhatItAdds() {
    missingCaution.check("""
        formula mix
          percent of charge
        stage bowl
          100 % date-paste
          mix
        variant sweet-mix of mix
          replace date-paste by 100 % honey
                                      ^^^^^ missing-caution: no `caution honey-infant`, and it holds `honey`
        """);
  }

  @Test
  void isOnlyWorthKnowingForNuts() {
    missingCaution.checkSeverity(Severity.INFORMATION, """
        formula mix
          percent of charge
        stage bowl
          100 % almond-paste
          mix
        """);
  }

  @Test
  void addsTheCaution() {
    missingCaution.checkFix("Add `caution hot-sugar`", """
        formula toffee
          percent of charge

        stage pan
          70 % white-sugar
          30 % water
          cook to 150 °C
        """, """
        formula toffee
          percent of charge
          caution   hot-sugar

        stage pan
          70 % white-sugar
          30 % water
          cook to 150 °C
        """);
  }
}
