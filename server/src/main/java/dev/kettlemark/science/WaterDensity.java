package dev.kettlemark.science;

import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;

/**
 * Gives the density of liquid water.
 *
 * <p>Equation: ρ = (999.83952 + 16.945176·t − 7.9870401e-3·t² − 46.170461e-6·t³ + 105.56302e-9·t⁴ − 280.54253e-12·t⁵) /
 * (1 + 16.879850e-3·t).
 *
 * <p>Symbols: ρ density in kg/m³; t temperature in °C.
 *
 * <p>Range: 0–150 °C; outside it the answer is unknown.
 *
 * <p>Expected error: 0.01 kg/m³ to 100 °C, 0.2 kg/m³ above.
 *
 * <p>Source: [1] G. S. Kell (1975), J. Chem. Eng. Data 20, 97–105; from memory, checked against IAPWS-IF97.
 */
public final class WaterDensity {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "density of water",
      "Kell's equation ρ(t)",
      "Kell 1975, J. Chem. Eng. Data 20:97",
      Confidence.STANDARD);

  private static final double HIGHEST_CELSIUS = 150;

  private WaterDensity() {}

  /** Returns the density of liquid water, 0–150 °C. */
  public static Outcome<Density> at(Temperature temperature) {
    double t = temperature.celsius();
    return t >= 0 && t <= HIGHEST_CELSIUS
        ? Outcome.known(Density.ofKilogramsPerCubicMetre(kilogramsPerCubicMetre(t)))
        : Outcome.unknown(Reason.OUTSIDE_VALID_RANGE, "%.0f °C lies outside 0 to 150 °C", t);
  }

  static double kilogramsPerCubicMetre(double t) {
    double above = 999.83952
        + t
            * (16.945176
                + t
                    * (-7.9870401e-3
                        + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
    return above / (1 + 16.879850e-3 * t);
  }
}
