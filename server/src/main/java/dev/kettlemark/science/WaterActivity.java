package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import java.util.List;

/**
 * Relates water content and water activity in storage, both ways, and finds the activity that layers settle at.
 *
 * <p>Equation: W = W_sucrose(a, T)·Σ sᵢ·rᵢ(a), solved for a or for W; layers in one sealed pack meet where Σ mⱼ·Wⱼ(a)
 * equals all their water.
 *
 * <p>Symbols: as in {@link SyrupBoiling}; mⱼ dry mass of layer j in kg.
 *
 * <p>Shape: any composition; pure water has activity 1; something without water has activity 0.
 *
 * <p>Range: 0–90 °C, everything dissolved or amorphous; grained products lie higher than the answer. Below 4 %
 * equivalent water a straight line to zero continues the model, an own estimate.
 *
 * <p>Expected error: ±0.02 above 0.5; ±0.05 below.
 *
 * <p>Source: as in {@link SyrupBoiling}.
 */
public final class WaterActivity {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "water activity",
      "W = W_sucrose(a, T)·Σ sᵢ·rᵢ(a)",
      "Starzak and Peacock 1997 with Stokes and Robinson 1966; ratios r are an own estimate",
      Confidence.MODEL);

  private static final double COLDEST_CELSIUS = 0;
  private static final double HOTTEST_CELSIUS = 90;
  private static final double LEAST_ACTIVITY = 1e-9;
  private static final double MOST_ACTIVITY = 1 - 1e-9;

  private static final double ERROR_ABOVE_HALF = 0.02;
  private static final double ERROR_BELOW_HALF = 0.05;

  private WaterActivity() {}

  /** Returns the water activity of a composition in storage. */
  public static Outcome<Ratio> of(Composition composition, Temperature temperature) {
    WaterHolding holding = WaterHolding.of(composition);
    if (!isStorage(temperature)) {
      return notStorage(temperature);
    }
    if (!composition.hasSolids()) {
      return Outcome.known(Ratio.ONE);
    }
    if (!holding.isMeaningful()) {
      return nothingDissolves();
    }
    double kelvin = temperature.kelvin();
    double water = composition.water().fraction();
    // Searching over equivalent sucrose solids avoids a second search for the inverse inside.
    double equivalent = Root.between(1e-9, 1, sucrose -> {
          double perSucrose = (1 - sucrose) / sucrose;
          double perSolids =
              perSucrose * holding.at(SucroseActivity.storageActivity(perSucrose, kelvin));
          return perSolids / (1 + perSolids) - water;
        })
        .orElse(0);
    return Outcome.known(
        equivalent == 0
            ? Ratio.ONE
            : Ratio.ofFraction(
                SucroseActivity.storageActivity((1 - equivalent) / equivalent, kelvin)));
  }

  /** Returns the band in which an activity of the model lies by its expected error. */
  public static Band<Ratio> withError(Ratio activity) {
    double error = activity.fraction() >= 0.5 ? ERROR_ABOVE_HALF : ERROR_BELOW_HALF;
    return new Band<>(
        Ratio.ofFraction(Math.max(0, activity.fraction() - error)),
        Ratio.ofFraction(Math.min(1, activity.fraction() + error)));
  }

  /**
   * Returns the share of water at which the solids of a composition have the given activity.
   *
   * @param activity above 0, below 1
   */
  public static Outcome<Ratio> waterFor(
      Composition solids, Ratio activity, Temperature temperature) {
    WaterHolding holding = WaterHolding.of(solids);
    if (!isStorage(temperature)) {
      return notStorage(temperature);
    }
    if (!holding.isMeaningful()) {
      return nothingDissolves();
    }
    if (!(activity.fraction() >= LEAST_ACTIVITY && activity.fraction() <= MOST_ACTIVITY)) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE,
          "a water activity of %.2f does not lie between 0 and 1",
          activity.fraction());
    }
    double perSolids = waterPerSolids(holding, activity.fraction(), temperature.kelvin());
    return Outcome.known(Ratio.ofFraction(perSolids / (1 + perSolids)));
  }

  /**
   * Returns the activity at which portions in one sealed pack come to rest.
   *
   * @param portions at least one, in any order; what hardly dissolves, such as a fat coat, takes no part
   */
  public static Outcome<Ratio> common(List<Portion> portions, Temperature temperature) {
    if (!isStorage(temperature)) {
      return notStorage(temperature);
    }
    double kelvin = temperature.kelvin();
    List<Portion> sharing = portions.stream()
        .filter(portion -> WaterHolding.of(portion.composition()).isMeaningful())
        .toList();
    if (sharing.isEmpty()) {
      return nothingDissolves();
    }
    List<WaterHolding> holdings =
        sharing.stream().map(portion -> WaterHolding.of(portion.composition())).toList();
    double water = sharing.stream()
        .map(portion -> portion.massOf(Component.WATER))
        .mapToDouble(Mass::kilograms)
        .sum();
    double[] solids = sharing.stream()
        .mapToDouble(
            portion -> portion.mass().times(portion.composition().solids()).kilograms())
        .toArray();
    var found = Root.between(LEAST_ACTIVITY, MOST_ACTIVITY, activity -> {
      double held = 0;
      for (int i = 0; i < solids.length; i++) {
        held += solids[i] * waterPerSolids(holdings.get(i), activity, kelvin);
      }
      return held / (held + 1) - water / (water + 1);
    });
    return found.isPresent()
        ? Outcome.known(Ratio.ofFraction(found.getAsDouble()))
        : Outcome.unknown(Reason.NO_SOLUTION, "the portions hold no water to share");
  }

  private static double waterPerSolids(WaterHolding holding, double activity, double kelvin) {
    return SucroseActivity.storageWaterPerSolids(activity, kelvin) * holding.at(activity);
  }

  private static boolean isStorage(Temperature temperature) {
    return temperature.celsius() >= COLDEST_CELSIUS && temperature.celsius() < HOTTEST_CELSIUS;
  }

  private static <T> Outcome<T> notStorage(Temperature temperature) {
    return Outcome.unknown(
        Reason.OUTSIDE_VALID_RANGE, "%.0f °C is no storage temperature", temperature.celsius());
  }

  private static <T> Outcome<T> nothingDissolves() {
    return Outcome.unknown(Reason.NOT_MODELLED, "hardly any of it dissolves in water");
  }
}
