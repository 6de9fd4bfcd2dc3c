package dev.kettlemark.quantity;

/**
 * Heat capacity per mass, held in joules per kilogram and kelvin.
 *
 * @param joulesPerKilogramKelvin the specific heat in J/(kg·K); finite and above zero
 */
public record SpecificHeat(double joulesPerKilogramKelvin) implements Comparable<SpecificHeat> {

  private static final double JOULES_PER_KILOJOULE = 1000;

  public SpecificHeat {
    joulesPerKilogramKelvin = Finite.positive(joulesPerKilogramKelvin, "a specific heat");
  }

  public static SpecificHeat ofJoulesPerKilogramKelvin(double joulesPerKilogramKelvin) {
    return new SpecificHeat(joulesPerKilogramKelvin);
  }

  public static SpecificHeat ofKilojoulesPerKilogramKelvin(double kilojoulesPerKilogramKelvin) {
    return new SpecificHeat(kilojoulesPerKilogramKelvin * JOULES_PER_KILOJOULE);
  }

  public double kilojoulesPerKilogramKelvin() {
    return joulesPerKilogramKelvin / JOULES_PER_KILOJOULE;
  }

  @Override
  public int compareTo(SpecificHeat other) {
    return Double.compare(joulesPerKilogramKelvin, other.joulesPerKilogramKelvin);
  }
}
