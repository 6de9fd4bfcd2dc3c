package dev.kettlemark.science;

import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.TemperatureDifference;

/**
 * Gives in closed form how far a sucrose syrup boils above water.
 *
 * <p>Equation: ΔT = u·exp(0.38607 + 0.27950·L + 0.08229·L² − 0.04554·L³)·(T_w/373.124)², L = ln(1 + u).
 *
 * <p>Symbols: ΔT elevation in K; u kg of sucrose per kg of water; T_w boiling point of water at the pressure in K.
 *
 * <p>Range: 10–97 % solids, 3000 m altitude (70 kPa) to sea level (105 kPa); outside it the answer is unknown.
 *
 * <p>Expected error against {@link SyrupBoiling}: 0.1 °C to 92 %, 0.5 °C to 97 %, 0.15 °C more at 3000 m.
 *
 * <p>Source: [1] own fit to Starzak and Peacock 1997.
 */
public final class BoilingElevation {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "boiling point above water, closed form",
      "ΔT = u·exp(0.38607 + 0.27950·L + 0.08229·L² − 0.04554·L³)·(Tw/373.124)², L = ln(1 + u)",
      "own fit to Starzak and Peacock 1997",
      Confidence.MODEL);

  private static final Ratio LEAST_SOLIDS = Ratio.ofPercent(10);
  private static final Ratio MOST_SOLIDS = Ratio.ofPercent(97);
  private static final Pressure LOWEST = Pressure.ofKilopascals(70);
  private static final Pressure HIGHEST = Pressure.ofKilopascals(105);

  /** Boiling point of water at one standard atmosphere in K. */
  private static final double STANDARD_BOILING_KELVIN = 373.124;

  private BoilingElevation() {}

  /** Returns how far a sucrose syrup boils above pure water under the same pressure. */
  public static Outcome<TemperatureDifference> of(Ratio solids, Pressure pressure) {
    if (solids.compareTo(LEAST_SOLIDS) < 0 || solids.compareTo(MOST_SOLIDS) > 0) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE, "%.1f %% solids lies outside 10 to 97 %%", solids.percent());
    }
    if (pressure.compareTo(LOWEST) < 0 || pressure.compareTo(HIGHEST) > 0) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE,
          "%.1f kPa lies outside 70 to 105 kPa",
          pressure.kilopascals());
    }
    double u = solids.fraction() / solids.complement().fraction();
    double l = Math.log1p(u);
    double atSeaLevel = u * Math.exp(0.38607 + l * (0.27950 + l * (0.08229 - l * 0.04554)));
    double relative = SaturationLine.kelvin(pressure.pascals()) / STANDARD_BOILING_KELVIN;
    return Outcome.known(TemperatureDifference.ofCelsius(atSeaLevel * relative * relative));
  }
}
