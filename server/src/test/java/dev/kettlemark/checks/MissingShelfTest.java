package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MissingShelfTest {

  private final RuleFixture missingShelf = RuleFixture.of(new MissingShelf());

  @Test
  void marksAReleasedPieceWithoutShelf() {
    missingShelf.check("""
        product fruit-bar
          status    released
                    ^^^^^^^^ missing-shelf: this is released, and does not say how long and where it keeps
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        """);
  }

  @Test
  void marksAReleasedPieceWithoutShelfAsError() {
    missingShelf.checkSeverity(Severity.ERROR, """
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        """);
  }

  @Test
  void marksAShelfWithoutAPlace() {
    missingShelf.check("""
        product fruit-bar
          status    released
                    ^^^^^^^^ missing-shelf: this is released, and does not say where it keeps
          centre    42.0 g   fruit-dough
          loss      4 % of centre
          shelf     6 weeks
        """);
  }

  @Test
  void offersNothingAsMarksAShelfWithoutAPlace() {
    missingShelf.checkNoFix("""
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
          loss      4 % of centre
          shelf     6 weeks
        """);
  }

  @Test
  void marksAShelfWithoutATime() {
    missingShelf.check("""
        product fruit-bar
          status    released
                    ^^^^^^^^ missing-shelf: this is released, and does not say how long it keeps
          centre    42.0 g   fruit-dough
          loss      4 % of centre
          shelf     at 15-18 °C
        """);
  }

  @Test
  void warnsOnASheetForHomes() {
    missingShelf.check("""
        product fruit-bar
          status    bench
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        sheet syrup-sheet of fruit-bar for home in en-GB
                             ^^^^^^^^^ missing-shelf: `fruit-bar`, which this sheet shows, does not say how long and where it keeps
        """);
  }

  @Test
  void warnsOnASheetForHomesAsWarning() {
    missingShelf.checkSeverity(Severity.WARNING, """
        product fruit-bar
          status    bench
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        sheet syrup-sheet of fruit-bar for home in en-GB
        """);
  }

  @Test
  void leavesASheetForCooksAlone() {
    missingShelf.check("""
        product fruit-bar
          status    bench
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        sheet syrup-sheet of fruit-bar for chef in en-GB
        """);
  }

  @Test
  void staysQuietWithBoth() {
    missingShelf.check("""
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
          loss      4 % of centre
          shelf     6 weeks at 15-18 °C
        sheet syrup-sheet of fruit-bar for home in en-GB
        """);
  }
}
