package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class PublishedDraftTest {

  private final RuleFixture publishedDraft = RuleFixture.of(new PublishedDraft());

  @Test
  void marksADraftOnASheetForHomes() {
    publishedDraft.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    draft
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
                             ^^^^^^^^^^^ published-draft: `plain-syrup` is a draft, and this sheet is for home
        """);
  }

  @Test
  void mendsMarksADraftOnASheetForHomes() {
    publishedDraft.checkFirstFix("Make it a sheet for `chef`, to be tried first", """
        formula plain-syrup
          version   2 on 2026-03-01
          status    draft
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
        """, """
        formula plain-syrup
          version   2 on 2026-03-01
          status    draft
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for chef in en-GB
        """);
  }

  @Test
  void marksAPieceWhoseCentreIsWithdrawn() {
    publishedDraft.check("""
        formula fruit-dough
          version   1 on 2026-03-01
          status    withdrawn
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        product fruit-bar
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        sheet syrup-sheet of fruit-bar for production in en-GB
                             ^^^^^^^^^ published-draft: `fruit-dough` is withdrawn, and this sheet is for production
        """);
  }

  @Test
  void marksAReleasedPieceOfADraft() {
    publishedDraft.check("""
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
                             ^^^^^^^^^^^ published-draft: `fruit-dough` is a draft, and this is released
          loss      4 % of centre
        formula fruit-dough
          version   1 on 2026-03-01
          status    draft
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        """);
  }

  @Test
  void offersNothingAsMarksAReleasedPieceOfADraft() {
    publishedDraft.checkNoFix("""
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        formula fruit-dough
          version   1 on 2026-03-01
          status    draft
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        """);
  }

  @Test
  void marksAReleasedFormulaOfADraft() {
    publishedDraft.check("""
        formula fruit-dough
          version   1 on 2026-03-01
          status    draft
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   fruit-dough
                    ^^^^^^^^^^^ published-draft: `fruit-dough` is a draft, and this is released
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void offersNothingAsMarksAReleasedFormulaOfADraft() {
    publishedDraft.checkNoFix("""
        formula fruit-dough
          version   1 on 2026-03-01
          status    draft
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   fruit-dough
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void leavesASheetForCooksAlone() {
    publishedDraft.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    draft
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for chef in en-GB
        """);
  }

  @Test
  void leavesABenchFormulaAlone() {
    publishedDraft.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
        product fruit-bar
          status    released
          centre    42.0 g   fruit-dough
          loss      4 % of centre
        formula fruit-dough
          version   1 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage dough
          60.00 %   date-paste
          40.00 %   oat-flake
          mix       date-paste, oat-flake
        """);
  }
}
