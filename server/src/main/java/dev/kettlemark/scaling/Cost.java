package dev.kettlemark.scaling;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What materials cost, as far as their prices are known.
 *
 * @param low by the lower end of the prices that are ranges
 * @param high by their upper end
 * @param unpriced the names of materials without a price, which come on top
 */
public record Cost(double low, double high, Set<String> unpriced) {

  /** Of nothing at all. */
  public static final Cost NOTHING = new Cost(0, 0, Set.of());

  public Cost {
    unpriced = Set.copyOf(unpriced);
  }

  static Cost unknown(String material) {
    return new Cost(0, 0, Set.of(material));
  }

  /** Whether every material has a price; otherwise it is a bound from below. */
  public boolean isComplete() {
    return unpriced.isEmpty();
  }

  /** The names of materials without a price, in order. */
  public Set<String> missing() {
    return new TreeSet<>(unpriced);
  }

  public Cost plus(Cost other) {
    return new Cost(
        low + other.low,
        high + other.high,
        Stream.concat(unpriced.stream(), other.unpriced.stream())
            .collect(Collectors.toUnmodifiableSet()));
  }

  public Cost times(double factor) {
    return new Cost(low * factor, high * factor, unpriced);
  }
}
