package dev.kettlemark.features;

import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.text.Span;

/**
 * A word of a line.
 *
 * @param span counted from the start of the text
 */
record Token(Lexeme.Kind kind, String text, Span span) {

  boolean is(Lexeme.Kind other) {
    return kind == other;
  }

  boolean reads(String word) {
    return text.equals(word);
  }

  /** Whether it stands right behind the word before it. */
  boolean isComma() {
    return kind == Lexeme.Kind.SYMBOL && text.equals(",");
  }
}
