package dev.kettlemark.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellsTest {

  /** Classes as Unicode Standard Annex #11 gives them in EastAsianWidth.txt; marks by general category. */
  @ParameterizedTest
  @CsvSource({
    "0041, 1", // A: Na
    "00E9, 1", // é: neutral or ambiguous
    "00B0, 1", // degree sign: A, narrow outside East Asian text
    "2013, 1", // en dash: A
    "2502, 1", // box drawing: A
    "0300, 0", // combining grave accent: Mn
    "200B, 0", // zero width space: Cf
    "1100, 2", // Hangul choseong: W
    "115F, 2", // Hangul choseong filler: W
    "2E80, 2", // CJK radical: W
    "3042, 2", // hiragana: W
    "4E00, 2", // ideograph: W
    "A4CF, 2", // Yi radical block: W
    "AC00, 2", // Hangul syllable: W
    "FF21, 2", // full-width A: F
    "FF61, 1", // half-width full stop: H
    "1F36F, 2", // honey pot: W
    "20000, 2", // ideograph of plane 2: W
    "2615, 2", // hot beverage: W
    "2614, 2", // umbrella with rain: W
    "2600, 1" // sun: N
  })
  void countsOneCodePoint(String hex, int cells) {
    assertEquals(cells, Cells.of(Integer.parseInt(hex, 16)));
  }

  @Test
  void padsOnEitherSide() {
    assertEquals("砂 |", Cells.left("砂", 3) + "|");
    assertEquals(" 砂", Cells.right("砂", 3));
    assertEquals("long", Cells.left("long", 2));
  }

  @Test
  void breaksAtSpacesAndNeverWithinAWord() {
    assertEquals(List.of("ab cd", "ef"), Cells.wrapped("ab  cd ef", 5));
    assertEquals(List.of("a", "verylong", "b"), Cells.wrapped("a verylong b", 4));
    assertEquals(List.of(""), Cells.wrapped("  ", 4));
    assertEquals(
        List.of("a", "x".repeat(199) + "…"), Cells.wrapped("a " + "x".repeat(1_000_000), 4));
  }
}
