package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Band;

/**
 * What the model expects of a measurement, in the unit of its {@link TrialQuantity}.
 *
 * @param best the likeliest figure
 * @param band where the model's own error leaves it
 */
public record Prediction(double best, Band<Double> band) {

  static Prediction of(Band<Double> band) {
    return new Prediction((band.low() + band.high()) / 2, band);
  }

  static Prediction within(double best, double slack) {
    return new Prediction(best, new Band<>(best - slack, best + slack));
  }
}
