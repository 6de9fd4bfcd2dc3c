package dev.kettlemark.science;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounds to a step, halves upwards, as label rules ask. */
final class Steps {

  private Steps() {}

  /**
   * Returns the value rounded to a multiple of the step, written with as many decimals as the step has.
   *
   * @param value not negative
   * @param step such as "0.5" or "10"
   */
  static String round(double value, String step) {
    BigDecimal unit = new BigDecimal(step);
    // Going through the shortest decimal keeps 2.25 a half, which its binary neighbours are not.
    BigDecimal steps = BigDecimal.valueOf(value).divide(unit, 0, RoundingMode.HALF_UP);
    return steps.multiply(unit).toPlainString();
  }
}
