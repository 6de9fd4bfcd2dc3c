package dev.kettlemark.cli;

import dev.kettlemark.text.Cells;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;

/**
 * The line in which a stretch of text starts, with carets below the stretch.
 *
 * <p>Of a line that finds no room only the part around the stretch is shown.
 *
 * @param number the line's number, from 1
 * @param line what is shown of the line
 * @param carets spaces and carets that stand below it
 */
record SourceExcerpt(int number, String line, String carets) {

  private static final int TAB = 4;
  private static final String CUT = "…";

  /** Nothing further away than this many characters can be on the same screen. */
  private static final int REACH = 400;

  /** One picture on the terminal with the cells it starts at and takes. */
  private record Glyph(String text, int cell, int cells, int offset) {

    int end() {
      return cell + cells;
    }
  }

  /**
   * Cuts an excerpt out of a text.
   *
   * @param span a stretch; one that runs over several lines is marked to the end of its first
   * @param width cells for the line, at least 20
   */
  static SourceExcerpt of(Source source, Span span, int width) {
    int number = source.lineAt(span.start());
    Span line = source.line(number);
    int start = Math.min(span.start(), line.end());
    int end = Math.max(start, Math.min(span.end(), line.end()));
    List<Glyph> glyphs = glyphs(source.text(), near(source.text(), line, start));
    int from = cellOf(glyphs, start);
    int to = Math.max(from + 1, cellOf(glyphs, end));
    int total = glyphs.isEmpty() ? 0 : glyphs.get(glyphs.size() - 1).end();
    if (total <= width) {
      return new SourceExcerpt(number + 1, text(glyphs, 0, total), carets(from, to));
    }
    int first = Math.max(0, Math.min(from - width / 3, total - width));
    int last = Math.min(total, first + width);
    String before = first > 0 ? CUT : "";
    String behind = last < total ? CUT : "";
    int left = first + before.length();
    int right = Math.min(to, last - behind.length());
    return new SourceExcerpt(
        number + 1,
        before + text(glyphs, left, last - behind.length()) + behind,
        carets(from - first, Math.max(from + 1, right) - first));
  }

  /** The part of a long line that can matter, not starting inside a character. */
  private static Span near(String text, Span line, int offset) {
    int start = Math.max(line.start(), offset - REACH);
    int end = Math.min(line.end(), offset + REACH);
    boolean inside = start > line.start() && Character.isLowSurrogate(text.charAt(start));
    return new Span(inside ? start - 1 : start, end);
  }

  private static List<Glyph> glyphs(String text, Span part) {
    List<Glyph> glyphs = new ArrayList<>();
    int cell = 0;
    int i = part.start();
    while (i < part.end()) {
      int codePoint = text.codePointAt(i);
      int cells = codePoint == '\t' ? TAB - cell % TAB : Cells.of(Visible.of(codePoint));
      String picture =
          codePoint == '\t' ? " ".repeat(cells) : Character.toString(Visible.of(codePoint));
      glyphs.add(new Glyph(picture, cell, cells, i));
      cell += cells;
      i += Character.charCount(codePoint);
    }
    return glyphs;
  }

  private static int cellOf(List<Glyph> glyphs, int offset) {
    for (Glyph glyph : glyphs) {
      if (glyph.offset() >= offset) {
        return glyph.cell();
      }
    }
    return glyphs.isEmpty() ? 0 : glyphs.get(glyphs.size() - 1).end();
  }

  /** The glyphs that lie wholly within; half of a wide one at either end leaves a space. */
  private static String text(List<Glyph> glyphs, int from, int to) {
    StringBuilder text = new StringBuilder();
    int cell = from;
    for (Glyph glyph : glyphs) {
      if (glyph.cell() >= from && glyph.end() <= to) {
        text.append(" ".repeat(glyph.cell() - cell)).append(glyph.text());
        cell = glyph.end();
      }
    }
    return text.toString().stripTrailing();
  }

  private static String carets(int from, int to) {
    return " ".repeat(from) + "^".repeat(to - from);
  }
}
