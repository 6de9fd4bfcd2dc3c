package dev.kettlemark.science;

import dev.kettlemark.quantity.Outcome;

/**
 * One figure from outside beside what this project computes for it.
 *
 * @param model the class that computes, as named to the reader
 * @param subject the case
 * @param unit of both figures; empty for a plain number
 * @param published the figure from outside
 * @param computed the figure of this project; NaN if it has no answer, which never passes
 * @param tolerance largest difference that passes, in the same unit
 * @param source where the figure comes from
 * @param provenance how it got here
 */
public record Check(
    String model,
    String subject,
    String unit,
    double published,
    double computed,
    double tolerance,
    String source,
    Provenance provenance) {

  /** How a figure got here. */
  public enum Provenance {
    /** Read in a published copy of the source. */
    READ("read"),
    /** Noted from memory of the source and not read there again. */
    FROM_MEMORY("from memory"),
    /**
     * Computed apart from this code from the equations of the source. It shows that the code does what the equations
     * say, not that the equations are right; it agrees to one in its last digit.
     */
    RECOMPUTED("recomputed");

    private final String word;

    Provenance(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** Returns by how much the computed figure lies above the published one. */
  public double difference() {
    return computed - published;
  }

  /** Tells whether the two agree within the tolerance. */
  public boolean passes() {
    return Math.abs(difference()) <= tolerance;
  }

  /** Tells whether the figure is printed somewhere, and not only computed apart. */
  public boolean isPublished() {
    return provenance != Provenance.RECOMPUTED;
  }

  /** Where a figure comes from and how it got here. */
  record Source(String text, Provenance provenance) {

    static Source read(String text) {
      return new Source(text, Provenance.READ);
    }

    static Source remembered(String text) {
      return new Source(text, Provenance.FROM_MEMORY);
    }

    static Source recomputed(String text) {
      return new Source(text, Provenance.RECOMPUTED);
    }

    Check check(
        String model,
        String subject,
        String unit,
        double published,
        Outcome<Double> computed,
        double tolerance) {
      double value = computed.orElse(Double.NaN);
      return new Check(model, subject, unit, published, value, tolerance, text, provenance);
    }

    Check check(
        String model,
        String subject,
        String unit,
        double published,
        double computed,
        double tolerance) {
      return check(model, subject, unit, published, Outcome.known(computed), tolerance);
    }
  }
}
