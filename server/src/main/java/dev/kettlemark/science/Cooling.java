package dev.kettlemark.science;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Temperature;

/**
 * Tells how far a mass that is left alone comes towards the temperature of the place.
 *
 * <p>Equation: T = T_place + (T_start − T_place)·e^(−t/τ).
 *
 * <p>Symbols: T in °C; t time in s; τ time constant in s, from 20 min for a shallow tray to 120 min for a full bowl.
 *
 * <p>Range: any temperatures, times from 0; the band lies between both time constants.
 *
 * <p>Expected error: the band covers kitchen batches from half a kilogram to some ten kilograms without a lid.
 *
 * <p>Source: Newton's law of cooling; the time constants are common practice, no source.
 */
public final class Cooling {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "temperature after standing",
      "T = Tp + (T0 − Tp)·e^(−t/τ), τ = 20–120 min",
      "Newton's law of cooling; time constants are common practice, no source",
      Confidence.RULE_OF_THUMB);

  private static final double QUICK_SECONDS = 20 * 60;
  private static final double SLOW_SECONDS = 120 * 60;

  private Cooling() {}

  /**
   * Returns the temperature after a time.
   *
   * @param start of the mass
   * @param place of what is around it
   * @param seconds not negative
   */
  public static Band<Temperature> after(
      Band<Temperature> start, Band<Temperature> place, double seconds) {
    Band<Temperature> quick = towards(start, place, Math.exp(-seconds / QUICK_SECONDS));
    return quick.spanning(towards(start, place, Math.exp(-seconds / SLOW_SECONDS)));
  }

  /** Both ends of the mass move to both ends of the place; neither passes it. */
  private static Band<Temperature> towards(
      Band<Temperature> start, Band<Temperature> place, double left) {
    return Band.spanning(
        mixed(place.low(), start.low(), left), mixed(place.high(), start.high(), left));
  }

  private static Temperature mixed(Temperature place, Temperature start, double left) {
    return Temperature.ofKelvin(place.kelvin() + left * (start.kelvin() - place.kelvin()));
  }
}
