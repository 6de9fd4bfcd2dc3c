package dev.kettlemark.science;

import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.SpecificEnergy;
import dev.kettlemark.quantity.Temperature;

/**
 * Gives the heat that turns water into steam.
 *
 * <p>Equation: h = 2498.5 − 2.1597·t − 2.6861e-3·t².
 *
 * <p>Symbols: h heat of vaporisation in kJ/kg; t temperature in °C.
 *
 * <p>Range: 0–150 °C; outside it the answer is unknown.
 *
 * <p>Expected error: 2.4 kJ/kg against IAPWS-IF97.
 *
 * <p>Source: [1] own fit to IAPWS-IF97.
 */
public final class LatentHeat {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "heat of vaporisation",
      "h = 2498.5 − 2.1597·t − 2.6861e-3·t²",
      "own fit to IAPWS-IF97",
      Confidence.MODEL);

  private static final double HIGHEST_CELSIUS = 150;

  private LatentHeat() {}

  /** Returns the heat of vaporisation of water, 0–150 °C. */
  public static Outcome<SpecificEnergy> ofWater(Temperature temperature) {
    double t = temperature.celsius();
    return t >= 0 && t <= HIGHEST_CELSIUS
        ? Outcome.known(SpecificEnergy.ofKilojoulesPerKilogram(kilojoulesPerKilogram(t)))
        : Outcome.unknown(Reason.OUTSIDE_VALID_RANGE, "%.0f °C lies outside 0 to 150 °C", t);
  }

  static double kilojoulesPerKilogram(double t) {
    return 2498.5 - t * (2.1597 + t * 2.6861e-3);
  }
}
