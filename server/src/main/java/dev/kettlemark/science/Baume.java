package dev.kettlemark.science;

import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;

/**
 * Translates degrees Brix, the sucrose in percent by mass, to the older degrees Baumé, at 20 °C.
 *
 * <p>Equation: Bé = 145 − 145/SG, SG = ρ(Bx)/ρ_w.
 *
 * <p>Symbols: Bé degrees Baumé; SG density against water at 20 °C; ρ by {@link FoodDensity}.
 *
 * <p>Range: 0–100 °Bx; outside it the answer is unknown.
 *
 * <p>Expected error: 0.4 °Bé.
 *
 * <p>Source: [1] modulus 145, as used for syrups; [2] table A2.1 in F. A. Mohos (2010), Confectionery and Chocolate
 * Engineering.
 */
public final class Baume {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "degrees Baumé", "Bé = 145 − 145/SG", "Mohos 2010, table A2.1", Confidence.MODEL);

  private static final double MODULUS = 145;
  private static final Temperature REFERENCE = Temperature.ofCelsius(20);

  private Baume() {}

  /** Returns degrees Baumé of a syrup with the given sucrose by mass. */
  public static Outcome<Double> ofBrix(Ratio brix) {
    double water = WaterDensity.kilogramsPerCubicMetre(REFERENCE.celsius());
    return FoodDensity.ofSyrup(brix, REFERENCE)
        .map(Density::kilogramsPerCubicMetre)
        .map(syrup -> MODULUS - MODULUS * water / syrup);
  }
}
