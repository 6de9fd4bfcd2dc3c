package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.SpecificEnergy;
import dev.kettlemark.quantity.SpecificHeat;
import dev.kettlemark.quantity.Temperature;

/**
 * Gives specific heat and heat content of mixtures by two models whose answers enclose the truth for syrups.
 *
 * <p>Equations: Janovskii syrup cp = 4.1868·(1 − w·(0.632 − 0.001·t)), heat content h = 4.1868·((1 − 0.632·w)·t +
 * 0.0005·w·t²); all else, and the other model throughout, cp = Σ wᵢ·cpᵢ after {@link ChoiOkos}.
 *
 * <p>Symbols: cp specific heat in kJ/(kg·K); h heat content above 0 °C in kJ/kg; w sugars and polyols as a fraction of
 * themselves with the water; t temperature in °C.
 *
 * <p>Shape: any composition, everything dissolved or molten; crystals that dissolve take up more heat than this says.
 *
 * <p>Range: −40 to 180 °C by {@link #specificHeat}; outside it the answer is unknown.
 *
 * <p>Expected error: the two differ by 1 % at 60 % solids and 20 °C, by 20 % at 95 % and 140 °C.
 *
 * <p>Source: [1] V. M. Janovskii and P. A. Archangelskii (1928), from memory. [2] Choi and Okos 1986.
 */
public enum HeatContent {
  /** Sugar syrup after Janovskii, all else after Choi and Okos. */
  JANOVSKII {
    @Override
    double kilojoulesPerKilogram(Composition composition, double t) {
      double rest = composition.weighted(
          component -> isSyrup(component) ? 0 : ChoiOkos.of(component).heatContent(t));
      double sweet = sweet(composition);
      double inSyrup = sweet + composition.fraction(Component.WATER);
      return rest + CALORIE * ((inSyrup - 0.632 * sweet) * t + 0.0005 * sweet * t * t);
    }

    @Override
    double kilojoulesPerKilogramKelvin(Composition composition, double t) {
      double rest = composition.weighted(
          component -> isSyrup(component) ? 0 : ChoiOkos.of(component).specificHeat(t));
      double sweet = sweet(composition);
      double inSyrup = sweet + composition.fraction(Component.WATER);
      return rest + CALORIE * (inSyrup - sweet * (0.632 - 0.001 * t));
    }
  },
  /** Everything after Choi and Okos. */
  CHOI_OKOS {
    @Override
    double kilojoulesPerKilogram(Composition composition, double t) {
      return ChoiOkos.mean(composition, group -> group.heatContent(t));
    }

    @Override
    double kilojoulesPerKilogramKelvin(Composition composition, double t) {
      return ChoiOkos.mean(composition, group -> group.specificHeat(t));
    }
  };

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "specific heat",
      "syrup cp = 4.1868·(1 − w·(0.632 − 0.001·t)); other parts Σ w·cp",
      "Janovskii and Archangelskii 1928, from memory; Choi and Okos 1986",
      Confidence.MODEL);

  /** The international calorie in joules, in which the equation was printed. */
  private static final double CALORIE = 4.1868;

  private static final double LOWEST_CELSIUS = -40;
  private static final double HIGHEST_CELSIUS = 180;

  /** Returns the specific heat, as the band between both models. */
  public static Outcome<Band<SpecificHeat>> specificHeat(
      Composition composition, Temperature temperature) {
    double t = temperature.celsius();
    if (!isInRange(t)) {
      return Outcome.unknown(Reason.OUTSIDE_VALID_RANGE, "%.0f °C lies outside −40 to 180 °C", t);
    }
    return Outcome.known(Band.spanning(
        SpecificHeat.ofKilojoulesPerKilogramKelvin(
            JANOVSKII.kilojoulesPerKilogramKelvin(composition, t)),
        SpecificHeat.ofKilojoulesPerKilogramKelvin(
            CHOI_OKOS.kilojoulesPerKilogramKelvin(composition, t))));
  }

  /** Returns the heat content above 0 °C by this model; −40 to 180 °C. */
  public Outcome<SpecificEnergy> above(Composition composition, Temperature temperature) {
    double t = temperature.celsius();
    return isInRange(t)
        ? Outcome.known(
            SpecificEnergy.ofKilojoulesPerKilogram(kilojoulesPerKilogram(composition, t)))
        : Outcome.unknown(Reason.OUTSIDE_VALID_RANGE, "%.0f °C lies outside −40 to 180 °C", t);
  }

  static boolean isInRange(double celsius) {
    return celsius >= LOWEST_CELSIUS && celsius <= HIGHEST_CELSIUS;
  }

  /** The heat content above 0 °C; the caller keeps the range. */
  abstract double kilojoulesPerKilogram(Composition composition, double t);

  /** The specific heat; the caller keeps the range. */
  abstract double kilojoulesPerKilogramKelvin(Composition composition, double t);

  private static double sweet(Composition composition) {
    return composition.sweetSolids().fraction();
  }

  private static boolean isSyrup(Component component) {
    return switch (component.family()) {
      case WATER, SUGAR, OLIGOSACCHARIDE, POLYOL -> true;
      default -> false;
    };
  }
}
