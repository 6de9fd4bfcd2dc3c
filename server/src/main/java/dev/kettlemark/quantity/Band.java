package dev.kettlemark.quantity;

import java.util.function.Function;

/**
 * The closed interval in which an estimate lies.
 *
 * @param low the lower end, not above the upper
 * @param high the upper end
 */
public record Band<T extends Comparable<? super T>>(T low, T high) {

  public Band {
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException(
          "a band must not end below its start: " + low + " to " + high);
    }
  }

  /** Returns the band of a value that is known exactly. */
  public static <T extends Comparable<? super T>> Band<T> of(T value) {
    return new Band<>(value, value);
  }

  /** Returns the narrowest band that holds both values, in whichever order they come. */
  public static <T extends Comparable<? super T>> Band<T> spanning(T one, T other) {
    return one.compareTo(other) <= 0 ? new Band<>(one, other) : new Band<>(other, one);
  }

  /** Returns the narrowest band that holds this band and another. */
  public Band<T> spanning(Band<T> other) {
    T lowest = low.compareTo(other.low) <= 0 ? low : other.low;
    T highest = high.compareTo(other.high) >= 0 ? high : other.high;
    return new Band<>(lowest, highest);
  }

  /**
   * Returns the band between the images of both ends.
   *
   * @param function rising or falling throughout the band; otherwise the result is too narrow
   */
  public <R extends Comparable<? super R>> Band<R> map(Function<? super T, ? extends R> function) {
    return spanning(function.apply(low), function.apply(high));
  }

  public boolean contains(T value) {
    return low.compareTo(value) <= 0 && value.compareTo(high) <= 0;
  }

  public boolean overlaps(Band<T> other) {
    return low.compareTo(other.high) <= 0 && other.low.compareTo(high) <= 0;
  }

  /** Tells whether even the upper end lies below the limit. */
  public boolean isWhollyBelow(T limit) {
    return high.compareTo(limit) < 0;
  }

  /** Tells whether even the lower end lies above the limit. */
  public boolean isWhollyAbove(T limit) {
    return low.compareTo(limit) > 0;
  }

  /** Tells whether both ends are the same value. */
  public boolean isExact() {
    return low.compareTo(high) == 0;
  }
}
