package dev.kettlemark.text;

/**
 * A half-open stretch of text, in UTF-16 units.
 *
 * @param start offset of the first unit, at least 0
 * @param end offset behind the last unit, at least {@code start}
 */
public record Span(int start, int end) {

  public Span {
    if (start < 0 || end < start) {
      throw new IllegalArgumentException("no span from " + start + " to " + end);
    }
  }

  /** The empty span at an offset. */
  public static Span at(int offset) {
    return new Span(offset, offset);
  }

  public int length() {
    return end - start;
  }

  public boolean isEmpty() {
    return start == end;
  }

  /** Whether the offset lies inside or right behind the span, as a cursor touches a word at both ends. */
  public boolean touches(int offset) {
    return start <= offset && offset <= end;
  }

  /** Whether the two spans share a unit, or one is empty and touches the other. */
  public boolean meets(Span other) {
    return start <= other.end && other.start <= end;
  }

  public boolean contains(Span other) {
    return start <= other.start && other.end <= end;
  }

  public Span shiftedBy(int distance) {
    return new Span(start + distance, end + distance);
  }

  /** The smallest span that holds both. */
  public Span to(Span other) {
    return new Span(Math.min(start, other.start), Math.max(end, other.end));
  }

  public String of(CharSequence text) {
    return text.subSequence(start, end).toString();
  }
}
