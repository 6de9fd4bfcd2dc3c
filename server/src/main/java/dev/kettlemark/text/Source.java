package dev.kettlemark.text;

import java.util.List;

/** An immutable text with its lines: offsets are UTF-16 units, positions are what the editor counts. */
public final class Source {

  private final String text;
  private final Lazy<LineIndex> lines;

  private Source(String text, Lazy<LineIndex> lines) {
    this.text = text;
    this.lines = lines;
  }

  public static Source of(String text) {
    return new Source(text, Lazy.of(() -> LineIndex.of(text)));
  }

  public String text() {
    return text;
  }

  public int length() {
    return text.length();
  }

  /** Number of lines, at least 1. */
  public int lineCount() {
    return lines.get().count();
  }

  public int lineAt(int offset) {
    return lines.get().lineAt(Math.min(offset, text.length()));
  }

  /** The line's stretch without its line end. */
  public Span line(int line) {
    int start = lines.get().start(line);
    int end = line + 1 < lines.get().count() ? lines.get().start(line + 1) : text.length();
    while (end > start && isLineEnd(text.charAt(end - 1))) {
      end--;
    }
    return new Span(start, end);
  }

  /**
   * The position of an offset.
   *
   * <p>An offset behind the text counts as its end, and one inside a character as the character's
   * start.
   */
  public Position position(int offset, PositionEncoding encoding) {
    int within = Math.min(offset, text.length());
    int line = lines.get().lineAt(within);
    int column = 0;
    int i = lines.get().start(line);
    while (i < within) {
      int codePoint = text.codePointAt(i);
      i += Character.charCount(codePoint);
      if (i <= within) {
        column += encoding.unitsOf(codePoint);
      }
    }
    return new Position(line, column);
  }

  /**
   * The offset of a position.
   *
   * <p>A line behind the text counts as its end, a column behind the line as the line's end, and a
   * column inside a character as the character's start; so every position has an offset.
   */
  public int offset(Position position, PositionEncoding encoding) {
    if (position.line() < 0) {
      return 0;
    }
    if (position.line() >= lines.get().count()) {
      return text.length();
    }
    Span line = line(position.line());
    int left = position.column();
    int i = line.start();
    while (i < line.end()) {
      int codePoint = text.codePointAt(i);
      left -= encoding.unitsOf(codePoint);
      if (left < 0) {
        return i;
      }
      i += Character.charCount(codePoint);
    }
    return line.end();
  }

  /** The text after one edit. */
  public Source with(TextEdit edit) {
    String changed = edit.applyTo(text);
    return new Source(changed, Lazy.known(lines.get().after(edit, changed)));
  }

  /** The text after edits that do not overlap; each names a stretch of this text. */
  public Source with(List<TextEdit> edits) {
    return of(TextEdit.applyAll(text, edits));
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
