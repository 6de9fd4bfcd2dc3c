package dev.kettlemark.quantity;

/**
 * A length or a height, held in metres.
 *
 * @param metres the length in m; finite, of either sign because a height may lie below the sea
 */
public record Length(double metres) implements Comparable<Length> {

  /** Exact by definition: NIST SP 811 (2008), appendix B.8, international foot. */
  private static final double METRES_PER_FOOT = 0.3048;

  private static final double INCHES_PER_FOOT = 12;
  private static final double MILLIMETRES_PER_METRE = 1000;

  public Length {
    metres = Finite.number(metres, "a length");
  }

  public static Length ofMetres(double metres) {
    return new Length(metres);
  }

  public static Length ofMillimetres(double millimetres) {
    return new Length(millimetres / MILLIMETRES_PER_METRE);
  }

  public static Length ofFeet(double feet) {
    return new Length(feet * METRES_PER_FOOT);
  }

  public double millimetres() {
    return metres * MILLIMETRES_PER_METRE;
  }

  public double feet() {
    return metres / METRES_PER_FOOT;
  }

  public double inches() {
    return feet() * INCHES_PER_FOOT;
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(metres, other.metres);
  }
}
