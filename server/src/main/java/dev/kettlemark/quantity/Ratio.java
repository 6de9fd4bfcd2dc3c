package dev.kettlemark.quantity;

/**
 * A share of something, held as a fraction: 25 % is 0.25.
 *
 * <p>The factories name the form, so percent and fraction cannot be confused.
 *
 * @param fraction the share as a fraction of one; finite, of either sign
 */
public record Ratio(double fraction) implements Comparable<Ratio> {

  /** Nothing of it. */
  public static final Ratio ZERO = new Ratio(0);

  /** All of it. */
  public static final Ratio ONE = new Ratio(1);

  private static final double PERCENT = 100;
  private static final double PARTS_PER_MILLION = 1e6;

  public Ratio {
    fraction = Finite.number(fraction, "a ratio");
  }

  public static Ratio ofFraction(double fraction) {
    return new Ratio(fraction);
  }

  /** The middle between both ends of a band. */
  public static Ratio middleOf(Band<Ratio> band) {
    return ofFraction((band.low().fraction + band.high().fraction) / 2);
  }

  public static Ratio ofPercent(double percent) {
    return new Ratio(percent / PERCENT);
  }

  public static Ratio ofPartsPerMillion(double partsPerMillion) {
    return new Ratio(partsPerMillion / PARTS_PER_MILLION);
  }

  public double percent() {
    return fraction * PERCENT;
  }

  public double partsPerMillion() {
    return fraction * PARTS_PER_MILLION;
  }

  public Ratio plus(Ratio other) {
    return new Ratio(fraction + other.fraction);
  }

  public Ratio minus(Ratio other) {
    return new Ratio(fraction - other.fraction);
  }

  public Ratio times(double factor) {
    return new Ratio(fraction * factor);
  }

  public Ratio times(Ratio other) {
    return new Ratio(fraction * other.fraction);
  }

  /** Returns what is left of the whole: 30 % gives 70 %. */
  public Ratio complement() {
    return new Ratio(1 - fraction);
  }

  /** Tells whether the ratio is a share of a whole, from 0 to 100 %. */
  public boolean isShare() {
    return fraction >= 0 && fraction <= 1;
  }

  @Override
  public int compareTo(Ratio other) {
    return Double.compare(fraction, other.fraction);
  }
}
