package dev.kettlemark.science;

import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;

/**
 * Gives the water activity of a pure sucrose syrup, the reference for every other syrup.
 *
 * <p>Equation: a = (1 − x)·exp((Q/RT)·x²·(1 + b·x + c·x²)).
 *
 * <p>Symbols: a water activity; x mole fraction of sucrose; T temperature in K; Q = −17 638 J/mol; R = 8.314462
 * J/(mol·K); b = −1.0038; c = −0.24653.
 *
 * <p>Range: 0–99.5 % solids from 90 °C up, 0–96 % below 90 °C. Above 96 % and below 90 °C the equation turns back on
 * itself, so storage questions use a straight line to zero activity instead, an own estimate.
 *
 * <p>Expected error: the boiling point follows within 0.3 °C to 75 % solids, 1.0 °C to 85 %, 3 °C to 90 %.
 *
 * <p>Source: [1] M. Starzak and S. D. Peacock (1997), Zuckerindustrie 122, 380–387; constants from memory.
 */
public final class SucroseActivity {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "water activity of sucrose syrup",
      "a = (1 − x)·exp(−17638/(R·T)·x²·(1 − 1.0038·x − 0.24653·x²))",
      "Starzak and Peacock 1997, Zuckerindustrie 122:380, constants from memory",
      Confidence.MODEL);

  /** Below this temperature the equation is not monotone above {@link #COOL_SOLIDS}. */
  static final double HOT_KELVIN = 363.15;

  /** Most solids at which the equation is used below {@link #HOT_KELVIN}. */
  static final double COOL_SOLIDS = 0.96;

  /** Most solids at which the equation is used at all; a hair above 99.5 %, which itself must have an answer. */
  static final double HOT_SOLIDS = 0.9951;

  private static final double COOL_WATER_PER_SOLIDS = (1 - COOL_SOLIDS) / COOL_SOLIDS;
  private static final double LEAST_SOLIDS = 1e-9;
  private static final double SEARCH_ACCURACY = 1e-6;

  private static final double Q_OVER_R = -17638 / 8.314462;
  private static final double B = -1.0038;
  private static final double C = -0.24653;

  private SucroseActivity() {}

  /**
   * Returns the water activity of a sucrose syrup.
   *
   * @param solids sucrose by mass, 0 to 99.5 %; above 96 % only from 90 °C up
   * @param temperature of the syrup
   */
  public static Outcome<Ratio> of(Ratio solids, Temperature temperature) {
    double most = mostSolids(temperature.kelvin());
    if (solids.fraction() < 0 || solids.fraction() > most) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE,
          "%.1f %% solids at %.0f °C lies outside 0 to %.1f %%",
          solids.percent(),
          temperature.celsius(),
          most * 100);
    }
    return Outcome.known(Ratio.ofFraction(activity(solids.fraction(), temperature.kelvin())));
  }

  static double mostSolids(double kelvin) {
    return kelvin < HOT_KELVIN ? COOL_SOLIDS : HOT_SOLIDS;
  }

  /** Tells whether a syrup of that activity lies within the range, allowing for the accuracy of a search. */
  static boolean covers(double activity, double kelvin) {
    return activity >= activity(mostSolids(kelvin), kelvin) * (1 - SEARCH_ACCURACY);
  }

  /** The equation of [1] itself; the caller keeps the range. */
  static double activity(double solids, double kelvin) {
    double moles = solids / Solutes.SUCROSE_GRAMS_PER_MOLE;
    double x = moles / (moles + (1 - solids) / Solutes.WATER_GRAMS_PER_MOLE);
    return (1 - x) * Math.exp(Q_OVER_R / kelvin * x * x * (1 + B * x + C * x * x));
  }

  /** The equation, continued to zero water by a straight line where a cool syrup leaves its range. */
  static double storageActivity(double waterPerSolids, double kelvin) {
    if (kelvin < HOT_KELVIN && waterPerSolids < COOL_WATER_PER_SOLIDS) {
      return activity(COOL_SOLIDS, kelvin) * waterPerSolids / COOL_WATER_PER_SOLIDS;
    }
    return activity(1 / (1 + waterPerSolids), kelvin);
  }

  /**
   * Returns kilograms of water per kilogram of sucrose at the given activity, never less than the range allows.
   *
   * @param activity above 0, below 1
   */
  static double waterPerSolids(double activity, double kelvin) {
    double solids = solidsAt(activity, kelvin);
    return (1 - solids) / solids;
  }

  private static double solidsAt(double activity, double kelvin) {
    double most = mostSolids(kelvin);
    if (activity <= activity(most, kelvin)) {
      return most;
    }
    // A bracket that does not close lies at the dilute end, where next to nothing is dissolved.
    return Root.between(LEAST_SOLIDS, most, w -> activity(w, kelvin) - activity)
        .orElse(LEAST_SOLIDS);
  }

  /** As {@link #waterPerSolids}, continued to zero water as in {@link #storageActivity}. */
  static double storageWaterPerSolids(double activity, double kelvin) {
    double atEnd = activity(COOL_SOLIDS, kelvin);
    if (kelvin < HOT_KELVIN && activity < atEnd) {
      return COOL_WATER_PER_SOLIDS * activity / atEnd;
    }
    return waterPerSolids(activity, kelvin);
  }
}
