package dev.kettlemark.science;

import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;

/**
 * Relates the temperature of boiling pure water to the pressure above it, both ways.
 *
 * <p>Equation: β²ϑ² + n₁β²ϑ + n₂β² + n₃βϑ² + n₄βϑ + n₅β + n₆ϑ² + n₇ϑ + n₈ = 0, solved in closed form for either.
 *
 * <p>Symbols: β = (p / 1 MPa)^¼; ϑ = T/1 K + n₉/(T/1 K − n₁₀); p pressure in MPa; T temperature in K; n₁ … n₁₀ numbers.
 *
 * <p>Range: 273.15–647.096 K, 611.21 Pa–22.064 MPa; outside it the answer is unknown.
 *
 * <p>Expected error: 0.025 % of the pressure, a few millikelvin at kitchen temperatures.
 *
 * <p>Source: [1] IAPWS R7-97(2012), region 4, equations 29 to 31. [2] W. Wagner and H.-J. Kretzschmar (2000), the IAPWS
 * industrial formulation 1997 for water and steam.
 */
public final class SaturationLine {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "boiling of pure water",
      "IF97 region 4, p(T)",
      "IAPWS R7-97(2012), equations 29 to 31",
      Confidence.STANDARD);

  private static final double LOWEST_KELVIN = 273.15;
  private static final double HIGHEST_KELVIN = 647.096;
  private static final double LOWEST_PASCALS = 611.21;
  private static final double HIGHEST_PASCALS = 22.064e6;
  private static final double PASCALS_PER_MEGAPASCAL = 1e6;

  private static final double N1 = 0.11670521452767e4;
  private static final double N2 = -0.72421316703206e6;
  private static final double N3 = -0.17073846940092e2;
  private static final double N4 = 0.12020824702470e5;
  private static final double N5 = -0.32325550322333e7;
  private static final double N6 = 0.14915108613530e2;
  private static final double N7 = -0.48232657361591e4;
  private static final double N8 = 0.40511340542057e6;
  private static final double N9 = -0.23855557567849;
  private static final double N10 = 0.65017534844798e3;

  private SaturationLine() {}

  /**
   * Returns the pressure at which pure water boils at the given temperature.
   *
   * @param temperature from 273.15 to 647.096 K
   */
  public static Outcome<Pressure> pressureAt(Temperature temperature) {
    if (!isInRange(temperature.kelvin())) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE,
          "water has no boiling pressure at %.1f °C",
          temperature.celsius());
    }
    return Outcome.known(Pressure.ofPascals(pascals(temperature.kelvin())));
  }

  /**
   * Returns the temperature at which pure water boils under the given pressure.
   *
   * @param pressure from 611.21 Pa to 22.064 MPa
   */
  public static Outcome<Temperature> boilingPoint(Pressure pressure) {
    if (!(pressure.pascals() >= LOWEST_PASCALS && pressure.pascals() <= HIGHEST_PASCALS)) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE, "water has no boiling point at %.0f Pa", pressure.pascals());
    }
    return Outcome.known(Temperature.ofKelvin(kelvin(pressure.pascals())));
  }

  static boolean isInRange(double kelvin) {
    return kelvin >= LOWEST_KELVIN && kelvin <= HIGHEST_KELVIN;
  }

  /** Equation 30 of [1]; the caller keeps the range. */
  static double pascals(double kelvin) {
    double theta = kelvin + N9 / (kelvin - N10);
    double a = theta * theta + N1 * theta + N2;
    double b = N3 * theta * theta + N4 * theta + N5;
    double c = N6 * theta * theta + N7 * theta + N8;
    double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
    return root * root * root * root * PASCALS_PER_MEGAPASCAL;
  }

  /** Equation 31 of [1]; the caller keeps the range. */
  static double kelvin(double pascals) {
    double beta = Math.sqrt(Math.sqrt(pascals / PASCALS_PER_MEGAPASCAL));
    double e = beta * beta + N3 * beta + N6;
    double f = N1 * beta * beta + N4 * beta + N7;
    double g = N2 * beta * beta + N5 * beta + N8;
    double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    double sum = N10 + d;
    return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2;
  }
}
