package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.text.Cells;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import org.junit.jupiter.api.Test;

class SourceExcerptTest {

  private static String excerpt(String text, String marked, int width) {
    int start = text.indexOf(marked);
    SourceExcerpt excerpt =
        SourceExcerpt.of(Source.of(text), new Span(start, start + marked.length()), width);
    return excerpt.line() + "\n" + excerpt.carets();
  }

  @Test
  void marksAStretch() {
    assertEquals("  60.00 % sugar\n          ^^^^^", excerpt("a\n  60.00 % sugar\nb", "sugar", 40));
  }

  @Test
  void countsLinesFromOne() {
    assertEquals(3, SourceExcerpt.of(Source.of("a\nb\nc"), Span.at(4), 40).number());
  }

  @Test
  void marksAnEmptyStretchWithOneCaret() {
    SourceExcerpt excerpt = SourceExcerpt.of(Source.of("ab"), Span.at(2), 40);
    assertEquals("ab\n  ^", excerpt.line() + "\n" + excerpt.carets());
  }

  @Test
  void marksSeveralLinesToTheEndOfTheFirst() {
    assertEquals("ab cd\n   ^^", excerpt("ab cd\nef", "cd\nef", 40));
  }

  @Test
  void showsTabsAsSpaces() {
    assertEquals("    a   b\n        ^", excerpt("\ta\tb", "b", 40));
  }

  /** Unicode Standard Annex #11: ideographs and full-width forms take two cells. */
  @Test
  void givesWideCharactersTwoCells() {
    assertEquals("# 砂糖 sugar\n       ^^^^^", excerpt("# 砂糖 sugar", "sugar", 40));
    assertEquals("# 砂糖\n  ^^^^", excerpt("# 砂糖", "砂糖", 40));
  }

  @Test
  void givesCombiningMarksNoCell() {
    assertEquals("cre\u0300me x\n      ^", excerpt("cre\u0300me x", "x", 40));
  }

  @Test
  void showsWhatHasNoPictureAsAMark() {
    assertEquals("a\uFFFD[31m b\n       ^", excerpt("a\u001b[31m b", "b", 40));
    assertEquals("\uFFFDa\n ^", excerpt("\u202Ea", "a", 40));
  }

  @Test
  void cutsALongLineAroundTheStretch() {
    String text = "x".repeat(100) + "here" + "y".repeat(100);
    assertEquals(
        "…xxxxxxxxxhere" + "y".repeat(15) + "…\n          ^^^^", excerpt(text, "here", 30));
  }

  @Test
  void keepsTheStartOfALongLineWhereTheStretchIsThere() {
    assertEquals(
        "here" + "y".repeat(25) + "…\n^^^^", excerpt("here" + "y".repeat(100), "here", 30));
  }

  @Test
  void keepsTheEndOfALongLineWhereTheStretchIsThere() {
    String line = "…" + "x".repeat(25) + "here";
    assertEquals(
        line + "\n" + " ".repeat(26) + "^^^^", excerpt("x".repeat(100) + "here", "here", 30));
  }

  @Test
  void neverTakesMoreCellsThanThereAre() {
    String text = "砂".repeat(500_000) + "here" + "糖".repeat(500_000);
    for (int width = 20; width < 26; width++) {
      SourceExcerpt excerpt =
          SourceExcerpt.of(Source.of(text), new Span(500_000, 1_000_004), width);
      assertTrue(Cells.of(excerpt.line()) <= width);
      assertTrue(Cells.of(excerpt.carets()) <= width);
    }
  }
}
