package dev.kettlemark.checks;

import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * The digits of a temperature, read in the scale that does not stand behind them.
 *
 * @param written the figure as it stands
 * @param reading the same digits in the other scale
 */
record OtherScale(Located<Quantity> written, Quantity reading) {

  static OtherScale of(Located<Quantity> written) {
    Quantity figure = written.value();
    Unit other = isCelsius(figure) ? Unit.FAHRENHEIT : Unit.CELSIUS;
    return new OtherScale(
        written,
        new Quantity(
            figure.low(),
            figure.high(),
            Optional.of(other),
            figure.tolerance(),
            figure.decimals()));
  }

  /** What the digits mean in the other scale. */
  Temperature temperature() {
    return Temperature.ofCelsius(reading.middleInBase().doubleValue());
  }

  /** Both ways to write what was meant, the one in °C first. */
  List<Fix> fixes(String text) {
    Span span = written.span();
    String swapped = swapped(span.of(text));
    String converted = converted(span.of(text));
    List<Fix> fixes = List.of(fix(swapped), fix(converted));
    return isCelsius(written.value()) ? List.of(fixes.get(1), fixes.get(0)) : fixes;
  }

  private Fix fix(String figure) {
    return Fix.replace("Write `" + figure + "`", written.span(), figure);
  }

  private String swapped(String figure) {
    return isCelsius(written.value())
        ? figure.replace("°C", "°F").replace("degC", "degF")
        : figure.replace("°F", "°C").replace("degF", "degC");
  }

  /** The meant temperature in the scale that was written, with the sign of a tolerance that was written. */
  private String converted(String figure) {
    String low = inWrittenScale(reading.lowInBase());
    String middle = reading.isRange() ? low + "–" + inWrittenScale(reading.highInBase()) : low;
    String tolerance = reading
        .toleranceInBase()
        .map(t -> t.divide(unit().factor()))
        .map(t -> " " + sign(figure) + " " + Display.trimmed(t.doubleValue(), 1))
        .orElse("");
    return middle + " " + unit().symbol() + tolerance;
  }

  private static String sign(String figure) {
    return Stream.of("+-", "+/-").filter(figure::contains).findFirst().orElse("±");
  }

  private String inWrittenScale(BigFraction celsius) {
    Temperature temperature = Temperature.ofCelsius(celsius.doubleValue());
    return isCelsius(written.value())
        ? Display.trimmed(temperature.celsius(), 1)
        : Display.fixed(temperature.fahrenheit(), 0);
  }

  private Unit unit() {
    return isCelsius(written.value()) ? Unit.CELSIUS : Unit.FAHRENHEIT;
  }

  private static boolean isCelsius(Quantity figure) {
    return figure.unit().filter(unit -> unit == Unit.CELSIUS).isPresent();
  }
}
