package dev.kettlemark.quantity;

/**
 * A mass, held in kilograms.
 *
 * <p>A mass may be negative: it then is a difference, such as water lost. Legal products:
 *
 * <table>
 *   <caption>What a mass combines with</caption>
 *   <tr><td>mass × number</td><td>mass</td></tr>
 *   <tr><td>mass × ratio</td><td>mass</td></tr>
 *   <tr><td>mass ÷ mass</td><td>ratio</td></tr>
 *   <tr><td>mass ÷ volume</td><td>density</td></tr>
 *   <tr><td>mass ÷ density</td><td>volume</td></tr>
 * </table>
 *
 * @param kilograms the mass in kg; finite
 */
public record Mass(double kilograms) implements Comparable<Mass> {

  /** No mass at all. */
  public static final Mass ZERO = new Mass(0);

  /** Exact by definition: NIST SP 811 (2008), appendix B.8, avoirdupois pound. */
  private static final double KILOGRAMS_PER_POUND = 0.45359237;

  private static final double OUNCES_PER_POUND = 16;
  private static final double GRAMS_PER_KILOGRAM = 1000;
  private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;

  public Mass {
    kilograms = Finite.number(kilograms, "a mass");
  }

  public static Mass ofKilograms(double kilograms) {
    return new Mass(kilograms);
  }

  public static Mass ofGrams(double grams) {
    return new Mass(grams / GRAMS_PER_KILOGRAM);
  }

  public static Mass ofMilligrams(double milligrams) {
    return new Mass(milligrams / MILLIGRAMS_PER_KILOGRAM);
  }

  public static Mass ofPounds(double pounds) {
    return new Mass(pounds * KILOGRAMS_PER_POUND);
  }

  public static Mass ofOunces(double ounces) {
    return ofPounds(ounces / OUNCES_PER_POUND);
  }

  public double grams() {
    return kilograms * GRAMS_PER_KILOGRAM;
  }

  public double milligrams() {
    return kilograms * MILLIGRAMS_PER_KILOGRAM;
  }

  public double pounds() {
    return kilograms / KILOGRAMS_PER_POUND;
  }

  public double ounces() {
    return pounds() * OUNCES_PER_POUND;
  }

  public Mass plus(Mass other) {
    return new Mass(kilograms + other.kilograms);
  }

  public Mass minus(Mass other) {
    return new Mass(kilograms - other.kilograms);
  }

  public Mass times(double factor) {
    return new Mass(kilograms * factor);
  }

  public Mass times(Ratio ratio) {
    return times(ratio.fraction());
  }

  /**
   * Returns this mass as a share of another.
   *
   * @throws IllegalArgumentException if the other mass is zero
   */
  public Ratio dividedBy(Mass whole) {
    return Ratio.ofFraction(kilograms / whole.kilograms);
  }

  /**
   * Returns the density of this mass in the given volume.
   *
   * @throws IllegalArgumentException if either is not above zero
   */
  public Density per(Volume volume) {
    return Density.ofKilogramsPerCubicMetre(kilograms / volume.cubicMetres());
  }

  /** Returns the volume that this mass fills at the given density. */
  public Volume at(Density density) {
    return Volume.ofCubicMetres(kilograms / density.kilogramsPerCubicMetre());
  }

  /** Tells whether this mass differs from another by no more than the tolerance. */
  public boolean isWithin(Mass tolerance, Mass other) {
    return Math.abs(kilograms - other.kilograms) <= tolerance.kilograms;
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(kilograms, other.kilograms);
  }
}
