package dev.kettlemark.syntax;

import dev.kettlemark.text.Span;

/** A token with its place in the section, comments included, white space left out. */
public record Lexeme(Kind kind, Span span) implements Placed<Lexeme> {

  /** What a token is by its shape. */
  public enum Kind {
    SECTION_WORD,
    CONNECTIVE,
    AMOUNT_WORD,
    UNIT,
    NUMBER,
    DATE,
    NAME,
    TEXT,
    COMMENT,
    SYMBOL,
    STRAY
  }

  @Override
  public Lexeme shiftedBy(int distance) {
    return new Lexeme(kind, span.shiftedBy(distance));
  }
}
