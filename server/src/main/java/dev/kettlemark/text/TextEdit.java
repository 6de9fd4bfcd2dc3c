package dev.kettlemark.text;

import java.util.Comparator;
import java.util.List;

/**
 * One replacement in a text.
 *
 * @param span what is replaced; empty to insert
 * @param replacement what stands there afterwards; empty to delete
 */
public record TextEdit(Span span, String replacement) {

  public static TextEdit insert(int offset, String text) {
    return new TextEdit(Span.at(offset), text);
  }

  public static TextEdit delete(Span span) {
    return new TextEdit(span, "");
  }

  public TextEdit shiftedBy(int distance) {
    return new TextEdit(span.shiftedBy(distance), replacement);
  }

  /** How much longer the text becomes. */
  public int growth() {
    return replacement.length() - span.length();
  }

  public String applyTo(String text) {
    return text.substring(0, span.start()) + replacement + text.substring(span.end());
  }

  /**
   * Applies edits that all speak of the same text.
   *
   * @throws IllegalArgumentException where two edits overlap
   */
  public static String applyAll(String text, List<TextEdit> edits) {
    List<TextEdit> sorted = edits.stream()
        .sorted(Comparator.comparingInt((TextEdit edit) -> edit.span().start()))
        .toList();
    StringBuilder result = new StringBuilder(text.length() + 64);
    int copied = 0;
    for (TextEdit edit : sorted) {
      if (edit.span().start() < copied) {
        throw new IllegalArgumentException("edits overlap at " + edit.span().start());
      }
      result.append(text, copied, edit.span().start()).append(edit.replacement());
      copied = edit.span().end();
    }
    return result.append(text, copied, text.length()).toString();
  }
}
