package dev.kettlemark.quantity;

/**
 * A volume, held in cubic metres.
 *
 * <p>A spoon, a cup and a fluid ounce are the customary units of the United States, exact fractions of the gallon of
 * 231 cubic inches.
 *
 * @param cubicMetres the volume in m³; finite, negative only as a difference
 */
public record Volume(double cubicMetres) implements Comparable<Volume> {

  /** No volume at all. */
  public static final Volume ZERO = new Volume(0);

  private static final double MILLILITRES_PER_CUBIC_METRE = 1e6;
  private static final double LITRES_PER_CUBIC_METRE = 1e3;

  /** Exact: 231 in³ of 2.54 cm. NIST SP 811 (2008), appendix B.8. */
  private static final double MILLILITRES_PER_GALLON = 3785.411784;

  private static final double FLUID_OUNCES_PER_GALLON = 128;
  private static final double CUPS_PER_GALLON = 16;
  private static final double TABLESPOONS_PER_GALLON = 256;
  private static final double TEASPOONS_PER_GALLON = 768;

  public Volume {
    cubicMetres = Finite.number(cubicMetres, "a volume");
  }

  public static Volume ofCubicMetres(double cubicMetres) {
    return new Volume(cubicMetres);
  }

  public static Volume ofLitres(double litres) {
    return new Volume(litres / LITRES_PER_CUBIC_METRE);
  }

  public static Volume ofMillilitres(double millilitres) {
    return new Volume(millilitres / MILLILITRES_PER_CUBIC_METRE);
  }

  public static Volume ofFluidOunces(double fluidOunces) {
    return ofGallons(fluidOunces / FLUID_OUNCES_PER_GALLON);
  }

  public static Volume ofCups(double cups) {
    return ofGallons(cups / CUPS_PER_GALLON);
  }

  public static Volume ofTablespoons(double tablespoons) {
    return ofGallons(tablespoons / TABLESPOONS_PER_GALLON);
  }

  public static Volume ofTeaspoons(double teaspoons) {
    return ofGallons(teaspoons / TEASPOONS_PER_GALLON);
  }

  private static Volume ofGallons(double gallons) {
    return ofMillilitres(gallons * MILLILITRES_PER_GALLON);
  }

  public double litres() {
    return cubicMetres * LITRES_PER_CUBIC_METRE;
  }

  public double millilitres() {
    return cubicMetres * MILLILITRES_PER_CUBIC_METRE;
  }

  public double fluidOunces() {
    return gallons() * FLUID_OUNCES_PER_GALLON;
  }

  public double cups() {
    return gallons() * CUPS_PER_GALLON;
  }

  public double tablespoons() {
    return gallons() * TABLESPOONS_PER_GALLON;
  }

  public double teaspoons() {
    return gallons() * TEASPOONS_PER_GALLON;
  }

  private double gallons() {
    return millilitres() / MILLILITRES_PER_GALLON;
  }

  public Volume plus(Volume other) {
    return new Volume(cubicMetres + other.cubicMetres);
  }

  public Volume minus(Volume other) {
    return new Volume(cubicMetres - other.cubicMetres);
  }

  public Volume times(double factor) {
    return new Volume(cubicMetres * factor);
  }

  public Volume times(Ratio ratio) {
    return times(ratio.fraction());
  }

  /** Returns the mass that fills this volume at the given density. */
  public Mass times(Density density) {
    return Mass.ofKilograms(cubicMetres * density.kilogramsPerCubicMetre());
  }

  /**
   * Returns this volume as a share of another.
   *
   * @throws IllegalArgumentException if the other volume is zero
   */
  public Ratio dividedBy(Volume whole) {
    return Ratio.ofFraction(cubicMetres / whole.cubicMetres);
  }

  @Override
  public int compareTo(Volume other) {
    return Double.compare(cubicMetres, other.cubicMetres);
  }
}
