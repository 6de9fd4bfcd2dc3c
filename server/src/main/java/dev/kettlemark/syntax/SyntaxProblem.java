package dev.kettlemark.syntax;

import dev.kettlemark.text.Span;

/** Something on a line that cannot be read: where it stands and one plain sentence. */
public record SyntaxProblem(Span span, String message) implements Placed<SyntaxProblem> {

  @Override
  public SyntaxProblem shiftedBy(int distance) {
    return new SyntaxProblem(span.shiftedBy(distance), message);
  }
}
