package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;

/**
 * Gives the density of syrups and of everything mixed with them, without air.
 *
 * <p>Equations: syrup 1/ρ = (1 − w)/ρ_w(t) + w·v·(1 + 4.5e-4·(t − 20))/1000, v = 0.6156 + 0.0087·w + 0.0196·w²; the rest
 * 1/ρ = Σ wᵢ/ρᵢ after {@link ChoiOkos}.
 *
 * <p>Symbols: ρ density in kg/m³; w sugars and polyols as a fraction of themselves with the water; v their apparent
 * volume in mL/g; ρ_w density of water; t temperature in °C.
 *
 * <p>Shape: any composition; all water counts as the water of the syrup.
 *
 * <p>Range: 0–150 °C; outside it the answer is unknown.
 *
 * <p>Expected error: 0.3 kg/m³ for sucrose syrup to 90 % at 20 °C; 0.5 % hot; 1 % for other sugars.
 *
 * <p>Source: [1] own fit to F. Plato's densities in NBS Circular 440 (1942), partly from memory; the warm term is an own
 * estimate. [2] Choi and Okos 1986.
 */
public final class FoodDensity {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "density without air",
      "1/ρ = (1 − w)/ρw + w·v/1000, v = 0.6156 + 0.0087·w + 0.0196·w²; other parts Σ w/ρ",
      "own fit to NBS Circular 440; Choi and Okos 1986",
      Confidence.MODEL);

  private static final double HIGHEST_CELSIUS = 150;
  private static final double REFERENCE_CELSIUS = 20;
  private static final double EXPANSION = 4.5e-4;

  private FoodDensity() {}

  /** Returns the density of a sugar syrup. */
  public static Outcome<Density> ofSyrup(Ratio solids, Temperature temperature) {
    if (!solids.isShare()) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE, "%.1f %% solids lies outside 0 to 100 %%", solids.percent());
    }
    return inRange(
        temperature,
        Density.ofKilogramsPerCubicMetre(1 / syrupVolume(solids.fraction(), bounded(temperature))));
  }

  /** Returns the density of any composition without air. */
  public static Outcome<Density> of(Composition composition, Temperature temperature) {
    double t = bounded(temperature);
    double inSyrup = composition.weighted(component -> isSyrup(component) ? 1 : 0);
    double sweet = composition.weighted(component -> component.isSweet() ? 1 : 0);
    double volume = composition.weighted(
        component -> isSyrup(component) ? 0 : 1 / ChoiOkos.of(component).density(t));
    if (inSyrup > 0) {
      volume += inSyrup * syrupVolume(sweet / inSyrup, t);
    }
    return inRange(temperature, Density.ofKilogramsPerCubicMetre(1 / volume));
  }

  /** Returns the specific volume in m³/kg. */
  private static double syrupVolume(double solids, double t) {
    double apparent = 0.6156 + solids * (0.0087 + solids * 0.0196);
    double warm = 1 + EXPANSION * (t - REFERENCE_CELSIUS);
    return (1 - solids) / WaterDensity.kilogramsPerCubicMetre(t) + solids * apparent * warm / 1000;
  }

  private static boolean isSyrup(Component component) {
    return component == Component.WATER || component.isSweet();
  }

  private static double bounded(Temperature temperature) {
    return Math.max(0, Math.min(HIGHEST_CELSIUS, temperature.celsius()));
  }

  private static Outcome<Density> inRange(Temperature temperature, Density density) {
    double t = temperature.celsius();
    return t >= 0 && t <= HIGHEST_CELSIUS
        ? Outcome.known(density)
        : Outcome.unknown(Reason.OUTSIDE_VALID_RANGE, "%.0f °C lies outside 0 to 150 °C", t);
  }
}
