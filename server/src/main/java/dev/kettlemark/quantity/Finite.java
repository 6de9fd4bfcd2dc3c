package dev.kettlemark.quantity;

/** The one place that decides which numbers a quantity accepts. */
final class Finite {

  private Finite() {}

  /**
   * Returns the value without a negative zero.
   *
   * @throws IllegalArgumentException if the value is NaN or infinite, which is a bug of the caller
   */
  static double number(double value, String what) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " must be a finite number, not " + value);
    }
    // Adding positive zero turns -0.0 into 0.0 and changes nothing else.
    return value + 0.0;
  }

  /** As {@link #number}, and the value must lie above zero. */
  static double positive(double value, String what) {
    if (!(number(value, what) > 0)) {
      throw new IllegalArgumentException(what + " must be above zero, not " + value);
    }
    return value;
  }
}
