package dev.kettlemark.syntax;

import dev.kettlemark.text.Span;

/** A word and where it stands in its section. */
public record Word(String text, Span span) implements Placed<Word> {

  @Override
  public Word shiftedBy(int distance) {
    return new Word(text, span.shiftedBy(distance));
  }
}
