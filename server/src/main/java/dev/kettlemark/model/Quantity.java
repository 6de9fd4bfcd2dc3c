package dev.kettlemark.model;

import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * A figure as written: exact, with its unit and tolerance.
 *
 * @param low the figure, or the lower end of a range
 * @param high the same figure, or the upper end of a range
 * @param unit the unit as written; empty where none stands
 * @param tolerance the figure behind {@code ±}, in {@code unit}; empty where none stands
 * @param decimals digits behind the point as written, the most of both ends
 */
public record Quantity(
    BigFraction low,
    BigFraction high,
    Optional<Unit> unit,
    Optional<BigFraction> tolerance,
    int decimals) {

  public static Quantity of(BigFraction value, Unit unit) {
    return new Quantity(value, value, Optional.of(unit), Optional.empty(), 0);
  }

  public boolean isRange() {
    return !low.equals(high);
  }

  public boolean measures(Unit.Dimension dimension) {
    return unit.isPresent() && unit.get().measures(dimension);
  }

  /** The middle of the range, or the figure itself, in the unit as written. */
  public BigFraction middle() {
    return isRange() ? low.add(high).divide(2) : low;
  }

  /** The middle in base units; for temperatures in °C. */
  public BigFraction middleInBase() {
    return inBase(middle());
  }

  public BigFraction lowInBase() {
    return inBase(low);
  }

  public BigFraction highInBase() {
    return inBase(high);
  }

  /** The tolerance in base units; a temperature difference for temperatures. */
  public Optional<BigFraction> toleranceInBase() {
    return tolerance.map(value -> unit.map(u -> scaled(value, u)).orElse(value));
  }

  private BigFraction inBase(BigFraction value) {
    if (unit.isEmpty()) {
      return value;
    }
    BigFraction shifted = unit.get() == Unit.FAHRENHEIT ? value.subtract(32) : value;
    return scaled(shifted, unit.get());
  }

  private static BigFraction scaled(BigFraction value, Unit unit) {
    return unit.factor().equals(BigFraction.ONE) ? value : value.multiply(unit.factor());
  }
}
