package dev.kettlemark.features;

import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** A temperature as written, told in the other scale. */
final class OtherScale {

  private static final BigFraction FAHRENHEIT_PER_CELSIUS = new BigFraction(9, 5);
  private static final BigFraction FAHRENHEIT_AT_ZERO_CELSIUS = new BigFraction(32);

  private OtherScale() {}

  /** As fine as the figure was written: whole degrees for whole °C, one decimal for °F. */
  static Optional<String> asWritten(Quantity written) {
    return written.unit().flatMap(unit -> switch (unit) {
      case CELSIUS -> Optional.of(told(written, figure -> fixed(figure, written.decimals())));
      case FAHRENHEIT ->
        Optional.of(told(written, figure -> trimmed(figure, Math.max(1, written.decimals()))));
      default -> Optional.empty();
    });
  }

  /** One decimal finer than written, which for °C is exact. */
  static Optional<String> exact(Quantity written) {
    return written
        .unit()
        .filter(unit -> unit.measures(Unit.Dimension.TEMPERATURE))
        .map(unit -> told(written, figure -> trimmed(figure, written.decimals() + 1)));
  }

  private interface Figure {
    String of(BigFraction value);
  }

  private static String told(Quantity written, Figure figure) {
    boolean fromCelsius = written.unit().filter(Unit.CELSIUS::equals).isPresent();
    String low = figure.of(converted(written.low(), fromCelsius));
    String high = figure.of(converted(written.high(), fromCelsius));
    String unit = fromCelsius ? " °F" : " °C";
    String slack = written
        .tolerance()
        .map(tolerance -> fromCelsius
            ? tolerance.multiply(FAHRENHEIT_PER_CELSIUS)
            : tolerance.divide(FAHRENHEIT_PER_CELSIUS))
        .map(tolerance -> " ± " + trimmed(tolerance, 1))
        .orElse("");
    return (low.equals(high) ? low : low + "–" + high) + unit + slack;
  }

  private static BigFraction converted(BigFraction degrees, boolean fromCelsius) {
    return fromCelsius
        ? degrees.multiply(FAHRENHEIT_PER_CELSIUS).add(FAHRENHEIT_AT_ZERO_CELSIUS)
        : degrees.subtract(FAHRENHEIT_AT_ZERO_CELSIUS).divide(FAHRENHEIT_PER_CELSIUS);
  }

  private static String fixed(BigFraction value, int decimals) {
    return Display.fixed(value.doubleValue(), decimals);
  }

  private static String trimmed(BigFraction value, int decimals) {
    return Display.trimmed(value.doubleValue(), decimals);
  }
}
