package dev.kettlemark.model;

import dev.kettlemark.quantity.Ratio;
import java.util.Optional;

/**
 * How much of an ingredient is usual.
 *
 * @param low the least that works
 * @param high the most that is usual
 * @param basis what the shares are of
 * @param source who says so
 */
public record UseRange(Ratio low, Ratio high, Basis basis, Optional<String> source) {

  public boolean contains(Ratio dose) {
    return low.compareTo(dose) <= 0 && dose.compareTo(high) <= 0;
  }
}
