package dev.kettlemark.model;

import dev.kettlemark.quantity.Mass;

/**
 * A mass of known composition.
 *
 * @param mass how much there is; not negative
 * @param composition what it is made of
 */
public record Portion(Mass mass, Composition composition) {

  public Portion {
    if (mass.kilograms() < 0) {
      throw new IllegalArgumentException(
          "a portion must not weigh less than nothing: " + mass.grams() + " g");
    }
  }

  /** Returns the mass of one component in the portion. */
  public Mass massOf(Component component) {
    return mass.times(composition.fraction(component));
  }
}
