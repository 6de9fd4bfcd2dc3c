package dev.kettlemark.syntax;

import dev.kettlemark.text.Span;
import org.antlr.v4.runtime.Token;

/** Turns ANTLR's code point indices into UTF-16 offsets. */
final class Offsets {

  /** UTF-16 offset of each code point and of the end; null where both counts agree. */
  private final int @org.jspecify.annotations.Nullable [] utf16;

  private Offsets(int @org.jspecify.annotations.Nullable [] utf16) {
    this.utf16 = utf16;
  }

  static Offsets of(String text) {
    int count = text.codePointCount(0, text.length());
    if (count == text.length()) {
      return new Offsets(null);
    }
    int[] offsets = new int[count + 1];
    int offset = 0;
    for (int i = 0; i < count; i++) {
      offsets[i] = offset;
      offset += Character.charCount(text.codePointAt(offset));
    }
    offsets[count] = offset;
    return new Offsets(offsets);
  }

  int of(int codePointIndex) {
    return utf16 == null ? codePointIndex : utf16[codePointIndex];
  }

  Span of(Token token) {
    int start = of(token.getStartIndex());
    return new Span(start, Math.max(start, of(token.getStopIndex() + 1)));
  }
}
