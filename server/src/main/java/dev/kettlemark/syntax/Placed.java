package dev.kettlemark.syntax;

import dev.kettlemark.text.Span;

/**
 * Something that stands in a section.
 *
 * @param <T> itself
 */
public interface Placed<T extends Placed<T>> {

  /** Where it stands, counted from the section's start. */
  Span span();

  /** The same thing, further on by so many characters, or further up by as many below zero. */
  T shiftedBy(int distance);
}
