package dev.kettlemark.science;

import dev.kettlemark.quantity.Outcome;

/**
 * One published figure beside what this project computes for it.
 *
 * @param model the class that computes, as named to the reader
 * @param subject the case
 * @param unit of both figures; empty for a plain number
 * @param published the figure in print
 * @param computed the figure of this project; NaN if it has no answer, which never passes
 * @param tolerance largest difference that passes, in the same unit
 * @param source where the figure is printed
 * @param fromMemory whether the figure was noted from memory of that source and not read again
 */
public record Check(
    String model,
    String subject,
    String unit,
    double published,
    double computed,
    double tolerance,
    String source,
    boolean fromMemory) {

  /** Returns by how much the computed figure lies above the published one. */
  public double difference() {
    return computed - published;
  }

  /** Tells whether the two agree within the tolerance. */
  public boolean passes() {
    return Math.abs(difference()) <= tolerance;
  }

  /** Where a figure is printed and whether it was read there. */
  record Source(String text, boolean fromMemory) {

    static Source read(String text) {
      return new Source(text, false);
    }

    static Source remembered(String text) {
      return new Source(text, true);
    }

    Check check(
        String model,
        String subject,
        String unit,
        double published,
        Outcome<Double> computed,
        double tolerance) {
      double value = computed.orElse(Double.NaN);
      return new Check(model, subject, unit, published, value, tolerance, text, fromMemory);
    }
  }
}
