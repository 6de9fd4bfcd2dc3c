package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.quantity.Temperature;

/**
 * The glass transition of dry sugars, polyols and glucose syrups, with Gordon and Taylor's k towards water.
 *
 * <p>Source: [1] Y. H. Roos (1993, 1995), Y. H. Roos and M. Karel (1991), from memory; sucrose, glucose, fructose,
 * isomalt, lactitol and trehalose also read in published tables. Gaps are filled by the closest kin:
 * mannitol and erythritol as sorbitol and xylitol, an own estimate.
 */
final class GlassConstants {

  /** Grades of glucose syrup and maltodextrin, with the dry glass transition of each in °C: [1]. */
  private static final double[] EQUIVALENTS = {5, 10, 20, 25, 36, 42, 63, 100};

  private static final double[] CELSIUS = {188, 160, 141, 121, 100, 79, 54, 31};

  private GlassConstants() {}

  /** Returns the dry glass transition in K of a component that takes part by itself. */
  static double dryKelvin(Component component) {
    return Temperature.ofCelsius(dryCelsius(component)).kelvin();
  }

  private static double dryCelsius(Component component) {
    return switch (component) {
      case SUCROSE -> 62;
      case GLUCOSE -> 31;
      case FRUCTOSE -> 5;
      case GALACTOSE -> 30;
      case MALTOSE -> 87;
      case LACTOSE -> 101;
      case TREHALOSE -> 107;
      case SORBITOL, MANNITOL -> -9;
      case XYLITOL, ERYTHRITOL -> -29;
      case GLYCEROL -> -93;
      case ISOMALT -> 63.6;
      case MALTITOL -> 43;
      case LACTITOL -> 52;
      // Never asked alone; a share of zero goes with it.
      default -> 0;
    };
  }

  /** Returns k towards water of a component that takes part by itself. */
  static double k(Component component) {
    return switch (component) {
      case SUCROSE -> 4.7;
      case GLUCOSE, GALACTOSE -> 4.5;
      case FRUCTOSE -> 3.8;
      case MALTOSE -> 6.0;
      case LACTOSE, TREHALOSE -> 6.7;
      case SORBITOL, MANNITOL -> 3.4;
      case XYLITOL, ERYTHRITOL, GLYCEROL -> 3.0;
      case ISOMALT -> 5.5;
      case MALTITOL, LACTITOL -> 4.8;
      default -> 0;
    };
  }

  /** Returns the dry glass transition in K of a glucose syrup, linear between the grades and held beyond them. */
  static double ofDextroseEquivalent(double equivalent) {
    int last = EQUIVALENTS.length - 1;
    double bounded = Math.max(EQUIVALENTS[0], Math.min(EQUIVALENTS[last], equivalent));
    int upper = 1;
    while (EQUIVALENTS[upper] < bounded) {
      upper++;
    }
    double share =
        (bounded - EQUIVALENTS[upper - 1]) / (EQUIVALENTS[upper] - EQUIVALENTS[upper - 1]);
    double celsius = CELSIUS[upper - 1] + share * (CELSIUS[upper] - CELSIUS[upper - 1]);
    return Temperature.ofCelsius(celsius).kelvin();
  }
}
