package dev.kettlemark.science;

import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.SpecificHeat;
import dev.kettlemark.quantity.Temperature;

/**
 * A bowl or kettle that takes up heat from what is poured into it.
 *
 * @param mass of the part that touches the contents
 * @param temperature before pouring
 * @param specificHeat of its material
 */
public record Vessel(Mass mass, Temperature temperature, SpecificHeat specificHeat) {

  /** Stainless steel; common engineering value. */
  private static final SpecificHeat STEEL = SpecificHeat.ofKilojoulesPerKilogramKelvin(0.50);

  public Vessel {
    if (mass.kilograms() < 0) {
      throw new IllegalArgumentException(
          "a vessel must not weigh less than nothing: " + mass.grams() + " g");
    }
  }

  /** Returns a vessel of stainless steel. */
  public static Vessel ofSteel(Mass mass, Temperature temperature) {
    return new Vessel(mass, temperature, STEEL);
  }

  /** Returns the same vessel with another temperature. */
  public Vessel at(Temperature other) {
    return new Vessel(mass, other, specificHeat);
  }

  /** Returns the heat in kJ that warms the vessel by one kelvin. */
  double kilojoulesPerKelvin() {
    return mass.kilograms() * specificHeat.kilojoulesPerKilogramKelvin();
  }
}
