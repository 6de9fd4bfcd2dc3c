package dev.kettlemark.science;

import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Reason;

/**
 * Gives the air pressure at a height above the sea.
 *
 * <p>Equation: p = p₀·(1 − L·H/T₀)^(g₀·M/(R*·L)).
 *
 * <p>Symbols: p pressure in Pa; H height in m; p₀ = 101 325 Pa; T₀ = 288.15 K; L = 0.0065 K/m; g₀ = 9.80665 m/s²; M =
 * 0.0289644 kg/mol; R* = 8.31432 J/(mol·K).
 *
 * <p>Range: −2000 to 11 000 m; outside it the answer is unknown.
 *
 * <p>Expected error: exact by definition; the weather moves the real pressure by some ±3 %, or ±1 °C of boiling.
 *
 * <p>Source: [1] ISO 2533:1975, standard atmosphere. [2] U.S. Standard Atmosphere (1976).
 */
public final class StandardAtmosphere {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "air pressure at the altitude",
      "p = 101325·(1 − 0.0065·H/288.15)^5.25588",
      "ISO 2533:1975",
      Confidence.STANDARD);

  private static final double LOWEST_METRES = -2000;
  private static final double HIGHEST_METRES = 11_000;

  private static final double SEA_LEVEL_KELVIN = 288.15;
  private static final double KELVIN_PER_METRE = 0.0065;
  private static final double GRAVITY = 9.80665;
  private static final double KILOGRAMS_PER_MOLE = 0.0289644;
  private static final double GAS_CONSTANT = 8.31432;
  private static final double EXPONENT =
      GRAVITY * KILOGRAMS_PER_MOLE / (GAS_CONSTANT * KELVIN_PER_METRE);

  private StandardAtmosphere() {}

  /**
   * Returns the standard pressure at a height.
   *
   * @param altitude height above the sea, −2000 to 11 000 m
   */
  public static Outcome<Pressure> pressureAt(Length altitude) {
    double metres = altitude.metres();
    if (metres < LOWEST_METRES || metres > HIGHEST_METRES) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE,
          "the standard atmosphere is not used here for %.0f m",
          metres);
    }
    double relative = Math.pow(1 - KELVIN_PER_METRE * metres / SEA_LEVEL_KELVIN, EXPONENT);
    return Outcome.known(Pressure.ofPascals(Pressure.STANDARD_ATMOSPHERE.pascals() * relative));
  }
}
