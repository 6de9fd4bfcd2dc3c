package dev.kettlemark.answers;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;

/**
 * A figure of an answer.
 *
 * @param word what it is, such as {@code cook-temperature}
 * @param low where its band starts; the figure itself where it is exact
 * @param figure the figure, in {@code unit}
 * @param high where its band ends
 * @param unit as the language writes it
 * @param shown the figure as a reader sees it, with its unit
 */
public record Value(
    String word, double low, double figure, double high, String unit, String shown) {

  static Value of(String word, Temperature temperature) {
    return of(word, temperature, Band.of(temperature));
  }

  static Value of(String word, Temperature temperature, Band<Temperature> band) {
    String shown = Display.celsius(temperature);
    return new Value(
        word,
        band.low().celsius(),
        temperature.celsius(),
        band.high().celsius(),
        "°C",
        band.isExact() ? shown : shown + " (" + Display.celsius(band) + ")");
  }

  /** A share that a model gives. */
  static Value estimate(String word, Ratio share) {
    return new Value(
        word, share.percent(), share.percent(), share.percent(), "%", Display.estimate(share));
  }

  /** A share that is weighed. */
  static Value exact(String word, Ratio share) {
    return new Value(
        word, share.percent(), share.percent(), share.percent(), "%", Display.percent(share));
  }

  static Value of(String word, Mass mass) {
    return new Value(word, mass.grams(), mass.grams(), mass.grams(), "g", Display.mass(mass));
  }

  static Value activity(String word, Ratio activity) {
    return new Value(
        word,
        activity.fraction(),
        activity.fraction(),
        activity.fraction(),
        "aw",
        Display.fixed(activity.fraction(), 2));
  }
}
