package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class LessSweetThanClaimedTest {

  private final RuleFixture lessSweetThanClaimed = RuleFixture.of(new LessSweetThanClaimed());

  /** By hand: 60 % of sucrose against 60 % of a maltodextrin with hardly any sugar. */
  @Test
  void tellsWhereMuchSweetnessIsGone() {
    lessSweetThanClaimed.check("""
        formula syrup
          batch   1000 g
        stage pan
          60 %    white-sugar
          40 %    water

        variant mild of syrup
          claim   as-sweet
                  ^^^^^^^^ less-sweet-than-claimed: it is about 13 % as sweet as sugar, and `syrup` is 60 %
          replace white-sugar by 60 % maltodextrin-18
        """);
  }

  @Test
  void comparesWithWhatIsNamed() {
    lessSweetThanClaimed.check("""
        formula strong
          batch   1000 g
        stage pan
          60 %    white-sugar
          40 %    water

        formula weak
          batch   1000 g
          claim   as-sweet of strong
                  ^^^^^^^^ less-sweet-than-claimed: it is about 40 % as sweet as sugar, and `strong` is 60 %
        stage pan
          40 %    white-sugar
          60 %    water
        """);
  }

  @Test
  void staysQuietWithoutTheClaimAndWithinATenth() {
    lessSweetThanClaimed.check("""
        formula syrup
          batch   1000 g
        stage pan
          60 %    white-sugar
          40 %    water

        variant mild of syrup
          replace white-sugar by 60 % maltodextrin-18

        variant fruity of syrup
          claim   as-sweet
          replace white-sugar by 55 % fructose
        """);
  }

  @Test
  void withdrawsTheClaim() {
    lessSweetThanClaimed.checkFix("Withdraw the claim", """
        formula syrup
          batch   1000 g
        stage pan
          60 %    white-sugar
          40 %    water

        variant mild of syrup
          claim   as-sweet
          replace white-sugar by 60 % maltodextrin-18
        """, """
        formula syrup
          batch   1000 g
        stage pan
          60 %    white-sugar
          40 %    water

        variant mild of syrup
          replace white-sugar by 60 % maltodextrin-18
        """);
  }
}
