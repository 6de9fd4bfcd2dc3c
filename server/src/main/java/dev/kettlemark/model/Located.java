package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.util.function.Function;

/**
 * A value and where it was written in its section.
 *
 * <p>The place stands beside the value, so that values themselves stay free of text.
 */
public record Located<T>(T value, Span span) {

  public <R> Located<R> map(Function<? super T, ? extends R> function) {
    return new Located<>(function.apply(value), span);
  }

  /** The same value with another place, for what a variant inherits. */
  public Located<T> at(Span other) {
    return new Located<>(value, other);
  }
}
