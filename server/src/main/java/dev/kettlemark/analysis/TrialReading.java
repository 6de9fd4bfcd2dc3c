package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import java.util.Optional;

/**
 * A measurement beside what the model predicts for it.
 *
 * @param measurement what was measured
 * @param predicted what the model says; unknown with its reason
 * @param wanted what the formula itself asks for: the tolerance of a step, or what it expects
 */
public record TrialReading(
    Measurement measurement, Outcome<Prediction> predicted, Optional<Band<Double>> wanted) {

  /** What floating point leaves of a figure that was converted from another unit. */
  private static final double ROUNDING = 1e-9;

  /** How a measurement compares with its prediction. */
  public enum Verdict {
    /** Within the band of the model. */
    AGREES("as predicted"),
    ABOVE("above the band"),
    BELOW("below the band"),
    /** There is nothing to compare with. */
    UNKNOWN("not comparable");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** Measured less predicted, in the unit of the quantity. */
  public Outcome<Double> difference() {
    return predicted.map(prediction -> measurement.value() - prediction.best());
  }

  public Verdict verdict() {
    return predicted
        .map(prediction -> verdict(measurement.value(), prediction.band()))
        .orElse(Verdict.UNKNOWN);
  }

  /** Whether the formula asks for something and got something else. */
  public boolean isOutsideWanted() {
    return wanted
        .filter(band -> verdict(measurement.value(), band) != Verdict.AGREES)
        .isPresent();
  }

  private static Verdict verdict(double value, Band<Double> band) {
    if (value > band.high() + ROUNDING) {
      return Verdict.ABOVE;
    }
    return value < band.low() - ROUNDING ? Verdict.BELOW : Verdict.AGREES;
  }
}
