package dev.kettlemark.quantity;

/**
 * An absolute pressure, held in pascals.
 *
 * @param pascals the pressure in Pa; finite and above zero
 */
public record Pressure(double pascals) implements Comparable<Pressure> {

  /** The standard atmosphere, exact by definition: ISO 2533:1975. */
  public static final Pressure STANDARD_ATMOSPHERE = new Pressure(101_325);

  private static final double PASCALS_PER_KILOPASCAL = 1e3;
  private static final double PASCALS_PER_MEGAPASCAL = 1e6;

  public Pressure {
    pascals = Finite.positive(pascals, "a pressure");
  }

  public static Pressure ofPascals(double pascals) {
    return new Pressure(pascals);
  }

  public static Pressure ofKilopascals(double kilopascals) {
    return new Pressure(kilopascals * PASCALS_PER_KILOPASCAL);
  }

  public static Pressure ofMegapascals(double megapascals) {
    return new Pressure(megapascals * PASCALS_PER_MEGAPASCAL);
  }

  public double kilopascals() {
    return pascals / PASCALS_PER_KILOPASCAL;
  }

  public double megapascals() {
    return pascals / PASCALS_PER_MEGAPASCAL;
  }

  @Override
  public int compareTo(Pressure other) {
    return Double.compare(pascals, other.pascals);
  }
}
