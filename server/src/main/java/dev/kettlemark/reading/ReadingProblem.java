package dev.kettlemark.reading;

import dev.kettlemark.text.Span;
import java.util.List;

/**
 * A line whose shape is right but whose meaning is not.
 *
 * @param span where
 * @param message one plain sentence
 * @param near the words that may be meant in its place, best first
 */
public record ReadingProblem(Span span, String message, List<String> near) {

  public ReadingProblem {
    near = List.copyOf(near);
  }

  public ReadingProblem(Span span, String message) {
    this(span, message, List.of());
  }
}
