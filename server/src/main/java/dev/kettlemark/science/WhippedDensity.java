package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.List;

/**
 * Estimates how light a mass can usually be whipped, by how much of it is solids.
 *
 * <p>Equation: straight lines between the usual densities of four products, each set at the solids at which it is usually
 * whipped: egg-white foam at 12 %, meringue at 70 %, marshmallow and frappé at 80 %, nougat at 92 %.
 *
 * <p>Symbols: density in kg/m³; solids as mass fraction of everything that is not water.
 *
 * <p>Shape: the composition of the mass that is whipped, without what is folded in later.
 *
 * <p>Range: solids up to 97 %, a stiffer mass takes no air from a whisk; at least 0.2 % of protein or fibre, or 15 % of
 * fat, since something must hold the bubbles. Below 12 % solids the first density holds.
 *
 * <p>Expected error: the band is that of common practice; whisk, speed and time decide within it.
 *
 * <p>Source: densities of the products as in {@link AeratedProduct}; the solids and the lines are an own estimate.
 */
public final class WhippedDensity {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "usual density of the whipped mass",
      "between egg-white foam at 12 %, meringue at 70 %, marshmallow at 80 % and nougat at 92 % solids",
      "common practice, no source; nougat by Decker and Ziegler 2003",
      Confidence.RULE_OF_THUMB);

  private static final double LEAST_FOAMER = 0.002;
  private static final double LEAST_FAT = 0.15;
  private static final double MOST_SOLIDS = 0.97;

  private static final List<Anchor> ANCHORS = List.of(
      new Anchor(0.12, AeratedProduct.EGG_WHITE_FOAM.density()),
      new Anchor(0.70, AeratedProduct.MERINGUE_WET.density()),
      new Anchor(
          0.80,
          AeratedProduct.MARSHMALLOW_DEPOSITED.density().spanning(AeratedProduct.FRAPPE.density())),
      new Anchor(0.92, AeratedProduct.NOUGAT_WHIPPED.density()));

  private WhippedDensity() {}

  /** Returns the usual density of a mass of this composition after whipping. */
  public static Outcome<Band<Density>> of(Composition composition) {
    double foamer = composition.fraction(Component.PROTEIN) + composition.fraction(Component.FIBRE);
    double fat = composition.fraction(Component.FAT);
    if (foamer < LEAST_FOAMER && fat < LEAST_FAT) {
      return Outcome.unknown(
          Reason.NOT_MODELLED,
          "nothing in it holds air: protein and fibre are %.2f %% of it, less than %.1f %%",
          foamer * 100,
          LEAST_FOAMER * 100);
    }
    double solids = composition.solids().fraction();
    return solids > MOST_SOLIDS
        ? Outcome.unknown(
            Reason.OUTSIDE_VALID_RANGE,
            "with %.1f %% solids it is too stiff to take air from a whisk",
            solids * 100)
        : Outcome.known(at(solids));
  }

  private static Band<Density> at(double solids) {
    Anchor below = ANCHORS.get(0);
    for (Anchor above : ANCHORS) {
      if (solids < above.solids) {
        return solids <= below.solids ? below.density : between(below, above, solids);
      }
      below = above;
    }
    return below.density;
  }

  private static Band<Density> between(Anchor below, Anchor above, double solids) {
    double way = (solids - below.solids) / (above.solids - below.solids);
    return new Band<>(
        mixed(below.density.low(), above.density.low(), way),
        mixed(below.density.high(), above.density.high(), way));
  }

  private static Density mixed(Density one, Density other, double way) {
    double start = one.kilogramsPerCubicMetre();
    return Density.ofKilogramsPerCubicMetre(start + way * (other.kilogramsPerCubicMetre() - start));
  }

  /** A product's usual density at its usual solids. */
  private record Anchor(double solids, Band<Density> density) {}
}
