package dev.kettlemark.science;

/**
 * Writes the figures of a European nutrition declaration.
 *
 * <p>Range: amounts per 100 g, not negative.
 *
 * <p>Source: European Commission (December 2012), guidance on tolerances and rounding for nutrient values on labels,
 * table 4; from memory.
 */
public enum EuropeanRounding {
  /** Energy in kJ or kcal, to 1. */
  ENERGY(0, "1", 0, "1"),
  /** Fat, carbohydrate, sugars, protein, fibre, polyols, starch in g. */
  MACRONUTRIENT(10, "1", 0.5, "0.1"),
  /** Saturated and unsaturated fatty acids in g. */
  FATTY_ACIDS(10, "1", 0.1, "0.1"),
  /** Salt in g. */
  SALT(1, "0.1", 0.0125, "0.01");

  private final double coarseFrom;
  private final String coarseStep;
  private final double negligible;
  private final String fineStep;

  EuropeanRounding(double coarseFrom, String coarseStep, double negligible, String fineStep) {
    this.coarseFrom = coarseFrom;
    this.coarseStep = coarseStep;
    this.negligible = negligible;
    this.fineStep = fineStep;
  }

  /**
   * Returns the figure as the label may print it, without its unit.
   *
   * @throws IllegalArgumentException if the amount is negative or not finite
   */
  public String of(double amount) {
    if (!(amount >= 0 && Double.isFinite(amount))) {
      throw new IllegalArgumentException("a label states no amount of " + amount);
    }
    if (amount <= negligible) {
      return "0";
    }
    return Steps.round(amount, amount >= coarseFrom ? coarseStep : fineStep);
  }
}
