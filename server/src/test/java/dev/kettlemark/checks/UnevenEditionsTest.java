package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnevenEditionsTest {

  private final RuleFixture unevenEditions = RuleFixture.of(new UnevenEditions());

  @Test
  void marksAnOldFigure() {
    unevenEditions.check("""
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
              ^^^^^^^^^^^ uneven-editions: other figures in the notes than in `blatt`
          note      "Let 0.5 kg boil."
        sheet blatt of plain-syrup for home in de-DE
              ^^^^^ uneven-editions: other figures in the notes than in `syrup-sheet`
          note      "0,6 kg kochen."
        """);
  }

  @Test
  void marksAMissingNote() {
    unevenEditions.check("""
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
          note      "Stir."
        sheet blatt of plain-syrup for home in de-DE
              ^^^^^ uneven-editions: one note less than in `syrup-sheet`
        """);
  }

  @Test
  void marksAnotherNumberOfPieces() {
    unevenEditions.check("""
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
              ^^^^^^^^^^^ uneven-editions: another number of pieces than in `blatt`
          makes     20 pieces
        sheet blatt of plain-syrup for home in de-DE
              ^^^^^ uneven-editions: another number of pieces than in `syrup-sheet`
          makes     24 pieces
        """);
  }

  @Test
  void takesACommaForADecimalMark() {
    unevenEditions.check("""
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
          note      "Let 0.50 kg boil."
        sheet blatt of plain-syrup for home in de-DE
          note      "0,5 kg kochen."
        """);
  }

  @Test
  void doesNotCompareRegionsReadersAndUnits() {
    unevenEditions.check("""
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
          note      "At 118 °C."
        sheet us of plain-syrup for home in en-US
          note      "Stir."
        sheet koch of plain-syrup for chef in de-DE
        sheet feuille of plain-syrup for home in fr-FR
          show      fahrenheit
          note      "244 °F."
        """);
  }
}
