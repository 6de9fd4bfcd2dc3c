package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import java.util.EnumMap;
import java.util.Map;

/**
 * Says how much sucrose dissolves, alone and beside other sugars, and how far a syrup lies beyond that.
 *
 * <p>Equations: Charles s = 64.397 + 0.07251·t + 0.0020569·t² − 9.035e-6·t³; Vavrinecz s = 64.447 + 0.08222·t +
 * 1.6169e-3·t² − 1.558e-6·t³ − 4.63e-8·t⁴; y = exp(−Σ cⱼ(t)·qⱼ); S = (sucrose/water) / ((s/(100 − s))·y).
 *
 * <p>Symbols: s % sucrose by mass in the saturated solution; t temperature in °C; y what the other sugars leave of the
 * solubility; qⱼ g of other saccharide per g of water; cⱼ = 0.185 − 0.0020·(t − 20) for monosaccharides and polyols and
 * 0.269 − 0.00175·(t − 20) for other saccharides; S supersaturation.
 *
 * <p>Range: Charles 0–140 °C, Vavrinecz 0–100 °C; the correction y to q = 4 and never above one.
 *
 * <p>Expected error: 0.5 percent points of s to 120 °C, 1.4 at 140 °C; y about 5 %.
 *
 * <p>Source: [1] D. F. Charles (1960), Int. Sugar J. 62, 126. [2] G. Vavrinecz (1962), Z. Zuckerind. 12, 481. Both from
 * memory. [3] y is an own estimate from the activity model, set to reproduce 42 DE syrup as a whole.
 */
public final class SucroseSolubility {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "sucrose beyond saturation",
      "S = (sucrose/water) / ((s/(100 − s))·y)",
      "Charles 1960, Int. Sugar J. 62:126, from memory; correction y is an own estimate",
      Confidence.MODEL);

  private static final double CHARLES_HIGHEST = 140;
  private static final double VAVRINECZ_HIGHEST = 100;
  private static final double MOST_OTHER_SUGAR_PER_WATER = 4;
  private static final double REFERENCE_CELSIUS = 20;

  private SucroseSolubility() {}

  /** Returns the sucrose in a saturated pure solution after Charles, 0–140 °C. */
  public static Outcome<Ratio> charles(Temperature temperature) {
    double t = temperature.celsius();
    return t < 0 || t > CHARLES_HIGHEST
        ? outside("%.0f °C lies outside 0 to 140 °C", t)
        : Outcome.known(Ratio.ofPercent(64.397 + t * (0.07251 + t * (0.0020569 - t * 9.035e-6))));
  }

  /** Returns the sucrose in a saturated pure solution after Vavrinecz, 0–100 °C. */
  public static Outcome<Ratio> vavrinecz(Temperature temperature) {
    double t = temperature.celsius();
    return t < 0 || t > VAVRINECZ_HIGHEST
        ? outside("%.0f °C lies outside 0 to 100 °C", t)
        : Outcome.known(Ratio.ofPercent(64.447
            + t * (0.08222 + t * (1.6169e-3 - t * (1.558e-6 + t * 4.63e-8)))));
  }

  /**
   * Returns what the other sugars of a syrup leave of sucrose's solubility, as a share.
   *
   * @param syrup with its water
   */
  public static Outcome<Ratio> otherSugarEffect(Composition syrup, Temperature temperature) {
    double water = syrup.water().fraction();
    double fromReference = temperature.celsius() - REFERENCE_CELSIUS;
    double small = syrup.weighted(component -> isSmall(component) ? 1 : 0);
    double large = syrup.weighted(component -> isLarge(component) ? 1 : 0);
    if (!(small + large <= water * MOST_OTHER_SUGAR_PER_WATER)) {
      return outside("so little water that the effect of other sugars is not known");
    }
    double exponent = small + large == 0
        ? 0
        : small / water * (0.185 - 0.0020 * fromReference)
            + large / water * (0.269 - 0.00175 * fromReference);
    // Above some 110 °C the fitted slope would let other sugars add to the solubility, which
    // nothing supports.
    return Outcome.known(Ratio.ofFraction(Math.exp(-Math.max(0, exponent))));
  }

  /**
   * Returns the supersaturation of sucrose: 1 is saturated, above it sucrose can crystallise.
   *
   * @param syrup with its water
   * @param temperature 0–140 °C
   */
  public static Outcome<Ratio> supersaturation(Composition syrup, Temperature temperature) {
    double water = syrup.water().fraction();
    if (water == 0) {
      return outside("without water there is no solution");
    }
    double perWater = syrup.fraction(Component.SUCROSE) / water;
    return Outcome.both(
        charles(temperature),
        otherSugarEffect(syrup, temperature),
        (saturated, effect) ->
            Ratio.ofFraction(perWater / (perWater(saturated) * effect.fraction())));
  }

  /**
   * Returns what is left of a syrup once the sucrose beyond saturation has crystallised: the mother liquor.
   *
   * <p>A syrup that is not saturated stays as it is. Crystals hold no water.
   *
   * @param syrup with its water
   * @param temperature 0–140 °C
   */
  public static Outcome<Composition> motherLiquor(Composition syrup, Temperature temperature) {
    return supersaturation(syrup, temperature).map(beyond -> {
      Map<Component, Mass> masses = new EnumMap<>(Component.class);
      for (Component component : syrup.present()) {
        masses.put(component, Mass.ofKilograms(syrup.fraction(component)));
      }
      masses.computeIfPresent(
          Component.SUCROSE, (sucrose, mass) -> mass.times(1 / Math.max(1, beyond.fraction())));
      return Composition.ofMasses(masses);
    });
  }

  /**
   * Returns the share of dissolved solids at which a blend of sugars is just saturated with sucrose.
   *
   * @param solids the blend; its own water is ignored
   */
  public static Outcome<Ratio> saturatedSolids(Composition solids, Temperature temperature) {
    if (solids.fraction(Component.SUCROSE) == 0) {
      return Outcome.unknown(Reason.NO_SOLUTION, "there is no sucrose to saturate with");
    }
    var found = Root.between(
        0.05,
        0.95,
        water -> supersaturation(solids.withWaterFraction(Ratio.ofFraction(water)), temperature)
            .map(beyond -> beyond.fraction() - 1)
            // Too dry for the correction means far beyond saturation.
            .orElse(1.0));
    return found.isPresent() && charles(temperature).isKnown()
        ? Outcome.known(Ratio.ofFraction(1 - found.getAsDouble()))
        : Outcome.unknown(
            Reason.NO_SOLUTION, "no share of water from 5 to 95 % saturates this blend");
  }

  private static double perWater(Ratio solution) {
    return solution.fraction() / solution.complement().fraction();
  }

  private static boolean isSmall(Component component) {
    return switch (component) {
      case GLUCOSE, FRUCTOSE, GALACTOSE -> true;
      default -> component.family() == Component.Family.POLYOL;
    };
  }

  private static boolean isLarge(Component component) {
    return switch (component) {
      case MALTOSE, LACTOSE, TREHALOSE, MALTOTRIOSE, HIGHER_SACCHARIDES -> true;
      default -> false;
    };
  }

  private static Outcome<Ratio> outside(String because, Object... values) {
    return Outcome.unknown(Reason.OUTSIDE_VALID_RANGE, because, values);
  }
}
