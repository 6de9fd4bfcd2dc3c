package dev.kettlemark.features;

import dev.kettlemark.features.LineScopes.Layout;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.syntax.ParsedText.PlacedSection;
import dev.kettlemark.text.Cells;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Lays a text out as a recipe on paper.
 *
 * <p>Only space, blank lines and spellings change; every line says the same afterwards, and a second
 * run changes nothing. A line that could not be read is left exactly as it is, and so is a text of which
 * only the headings are read. Edits are as small as
 * can be, so that cursors stay in place.
 */
public final class Formatter {

  private final Source source;
  private final List<WrittenLine> lines;
  private final LineSpacing spacing;
  private final List<TextEdit> edits = new ArrayList<>();

  private Formatter(Source source, List<WrittenLine> lines, LineSpacing spacing) {
    this.source = source;
    this.lines = lines;
    this.spacing = spacing;
  }

  /**
   * Lays out one section.
   *
   * @param isApart whether a heading may stand right below what is above it
   */
  private static Formatter of(ParsedText text, PlacedSection placed, boolean isApart) {
    List<WrittenLine> lines = WrittenLine.of(text, placed);
    boolean goesOn = placed.end() < text.source().length();
    Formatter formatter =
        new Formatter(text.source(), lines, new LineSpacing(lines, isApart, goesOn));
    formatter.formatLines();
    return formatter;
  }

  /** The text in its layout. */
  public static String format(String text) {
    return TextEdit.applyAll(text, edits(ParsedText.of(text)));
  }

  /** What to change in the whole text, in order. */
  public static List<TextEdit> edits(ParsedText text) {
    return List.copyOf(edits(text, text.sections()));
  }

  /** Of sections that follow each other; what stands above the first one is taken for apart from it. */
  private static List<TextEdit> edits(ParsedText text, List<PlacedSection> sections) {
    List<TextEdit> edits = new ArrayList<>();
    if (text.isHeadingsOnly()) {
      return edits;
    }
    boolean isApart = true;
    for (PlacedSection placed : sections) {
      Formatter formatter = of(text, placed, isApart);
      if (placed.end() == text.source().length()) {
        formatter.endLastLine();
      }
      edits.addAll(formatter.edits);
      isApart = formatter.spacing.endsApart();
    }
    return edits;
  }

  /**
   * What to change inside the lines of one section, in order; the same as in the whole text.
   *
   * <p>Blank lines that are missing or too many are left as they are, since above and below the section
   * other ones stand.
   */
  static List<TextEdit> editsInLines(ParsedText text, PlacedSection placed) {
    Formatter formatter = of(text, placed, true);
    return formatter.edits.stream().filter(formatter::isInLine).toList();
  }

  /**
   * What to change on the lines that a range touches, in order.
   *
   * <p>The sections before and behind are looked at as well, since blank lines between two sections hang on both.
   */
  public static List<TextEdit> edits(ParsedText text, Span range) {
    int first = text.source().lineAt(range.start());
    int last = text.source().lineAt(range.end());
    return edits(text, text.sectionsAround(range)).stream()
        .filter(edit -> {
          int line = text.source().lineAt(edit.span().start());
          return first <= line && line <= last;
        })
        .toList();
  }

  private void formatLines() {
    Map<Integer, Layout> layouts = LineScopes.of(lines);
    for (WrittenLine line : lines) {
      if (spacing.isSurplus(line.number())) {
        replace(new Span(line.span().start(), nextStart(line)), "");
        continue;
      }
      if (spacing.lacksBlankBefore(line.number())) {
        replace(Span.at(line.span().start()), lineEndBefore(line));
      }
      Layout layout = layouts.get(line.number());
      if (layout != null) {
        formatRow(layout);
      } else if (!line.broken()) {
        formatWordless(line);
      }
    }
  }

  private void endLastLine() {
    WrittenLine last = lines.get(lines.size() - 1);
    if (!last.isBlank()) {
      replace(Span.at(source.length()), lineEndBefore(last));
    }
  }

  private void formatRow(Layout layout) {
    Row row = layout.row().row();
    int written = row.line().span().start();
    int column = 0;
    for (int i = 0; i < row.cells().size(); i++) {
      Row.Cell cell = row.cells().get(i);
      for (int j = 0; j < cell.tokens().size(); j++) {
        int start = j == 0 ? layout.row().starts().get(i) : column + cell.gapBefore(j);
        Token token = cell.tokens().get(j);
        String word = cell.words().get(j);
        replace(new Span(written, token.span().start()), " ".repeat(start - column));
        replace(token.span(), word);
        written = token.span().end();
        column = start + Cells.of(word);
      }
    }
    formatEnd(row.line(), written, Math.max(0, layout.comment() - column));
  }

  /** A comment with a line to itself, or a blank line. */
  private void formatWordless(WrittenLine line) {
    formatEnd(line, line.span().start(), spacing.commentColumn(line.number()));
  }

  private void formatEnd(WrittenLine line, int written, int gap) {
    if (line.comment().isEmpty()) {
      if (line.isBlank() && standsBetweenHalvesOfALineEnd(line)) {
        return;
      }
      replace(new Span(written, line.span().end()), "");
      return;
    }
    Span comment = line.comment().get().span();
    int end = comment.start() + line.comment().get().text().stripTrailing().length();
    replace(new Span(written, comment.start()), " ".repeat(gap));
    replace(new Span(end, line.span().end()), "");
  }

  /** Without its space, the ends of such a line and of the line above would make one. */
  private boolean standsBetweenHalvesOfALineEnd(WrittenLine line) {
    int start = line.span().start();
    int end = line.span().end();
    return start > 0
        && source.text().charAt(start - 1) == '\r'
        && end < source.length()
        && source.text().charAt(end) == '\n';
  }

  /** Leaves out what stands there already. */
  private void replace(Span span, String text) {
    String written = source.text();
    int least = Math.min(span.length(), text.length());
    int same = 0;
    while (same < least && written.charAt(span.start() + same) == text.charAt(same)) {
      same++;
    }
    if (same < Math.max(span.length(), text.length())) {
      edits.add(new TextEdit(new Span(span.start() + same, span.end()), text.substring(same)));
    }
  }

  /** Neither takes a line away nor adds one. */
  private boolean isInLine(TextEdit edit) {
    Span line = source.line(source.lineAt(edit.span().start()));
    return line.contains(edit.span())
        && edit.replacement().indexOf('\n') < 0
        && edit.replacement().indexOf('\r') < 0;
  }

  private int nextStart(WrittenLine line) {
    return line.number() + 1 < source.lineCount()
        ? source.line(line.number() + 1).start()
        : source.length();
  }

  /** The kind of line end that stands above, for a line that is added. */
  private String lineEndBefore(WrittenLine line) {
    return line.number() == 0
        ? "\n"
        : source
            .text()
            .substring(
                source.line(line.number() - 1).end(), source.line(line.number()).start());
  }
}
