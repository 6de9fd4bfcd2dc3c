package dev.kettlemark.scaling;

import dev.kettlemark.model.House;
import dev.kettlemark.quantity.Ratio;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * One thing to weigh.
 *
 * @param stage where it goes in
 * @param ingredient what it is
 * @param grams the exact amount
 * @param scale the finest scale that can hold it; empty where the house has none
 * @param reading what the scale shall show, in grams
 * @param weighings how many times it must be weighed, since no scale holds it at once
 * @param premix a way to weigh what no scale can weigh well
 */
public record WeighingLine(
    String stage,
    String ingredient,
    BigFraction grams,
    Optional<House.Scale> scale,
    BigFraction reading,
    int weighings,
    Optional<Premix> premix) {

  /**
   * A dry mix of which a well weighable amount holds what is needed.
   *
   * @param carrier what it is mixed with, taken from another line of the same stage
   * @param parts parts of carrier to one part
   * @param grams how much of the mix to weigh
   */
  public record Premix(String carrier, int parts, BigFraction grams) {

    /** How much less of the carrier is weighed on its own line. */
    public BigFraction carrierGrams() {
      return grams.multiply(new BigFraction(parts, parts + 1));
    }
  }

  /** By how much the reading misses the exact amount, signed. */
  public Ratio roundingError() {
    return grams.signum() == 0
        ? Ratio.ZERO
        : Ratio.ofFraction(reading.subtract(grams).divide(grams).doubleValue());
  }
}
