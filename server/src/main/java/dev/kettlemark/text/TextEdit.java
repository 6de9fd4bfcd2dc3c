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

  /**
   * The same edit without what it replaces by itself at either end.
   *
   * <p>Cursors and marks stay where they are, and editors that count columns in bytes are not misled by
   * letters that need several.
   */
  public TextEdit withoutWhatStays(String text) {
    int most = Math.min(span.length(), replacement.length());
    int head = 0;
    while (head < most && text.charAt(span.start() + head) == replacement.charAt(head)) {
      head++;
    }
    if (head > 0 && Character.isHighSurrogate(replacement.charAt(head - 1))) {
      head--;
    }
    int tail = 0;
    while (tail < most - head
        && text.charAt(span.end() - 1 - tail)
            == replacement.charAt(replacement.length() - 1 - tail)) {
      tail++;
    }
    if (tail > 0 && Character.isLowSurrogate(replacement.charAt(replacement.length() - tail))) {
      tail--;
    }
    return new TextEdit(
        new Span(span.start() + head, span.end() - tail),
        replacement.substring(head, replacement.length() - tail));
  }

  /** How much longer the text becomes. */
  public int growth() {
    return replacement.length() - span.length();
  }

  public String applyTo(String text) {
    // With room from the start: a long text is copied at each key, and needs to be but twice.
    return new StringBuilder(text.length() + growth())
        .append(text, 0, span.start())
        .append(replacement)
        .append(text, span.end(), text.length())
        .toString();
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
