package dev.kettlemark.quantity;

/**
 * Energy per mass, such as an enthalpy or a latent heat, held in joules per kilogram.
 *
 * @param joulesPerKilogram the specific energy in J/kg; finite, of either sign
 */
public record SpecificEnergy(double joulesPerKilogram) implements Comparable<SpecificEnergy> {

  private static final double JOULES_PER_KILOJOULE = 1000;

  public SpecificEnergy {
    joulesPerKilogram = Finite.number(joulesPerKilogram, "a specific energy");
  }

  public static SpecificEnergy ofJoulesPerKilogram(double joulesPerKilogram) {
    return new SpecificEnergy(joulesPerKilogram);
  }

  public static SpecificEnergy ofKilojoulesPerKilogram(double kilojoulesPerKilogram) {
    return new SpecificEnergy(kilojoulesPerKilogram * JOULES_PER_KILOJOULE);
  }

  public double kilojoulesPerKilogram() {
    return joulesPerKilogram / JOULES_PER_KILOJOULE;
  }

  /** Returns the energy that the given mass holds. */
  public Energy times(Mass mass) {
    return Energy.ofJoules(joulesPerKilogram * mass.kilograms());
  }

  @Override
  public int compareTo(SpecificEnergy other) {
    return Double.compare(joulesPerKilogram, other.joulesPerKilogram);
  }
}
