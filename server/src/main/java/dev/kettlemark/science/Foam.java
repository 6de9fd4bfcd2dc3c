package dev.kettlemark.science;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Volume;

/**
 * Relates the density of a foam to the air in it.
 *
 * <p>Equations: overrun = (ρ − ρ_f)/ρ_f; gas fraction φ = 1 − ρ_f/ρ; folding in adds volumes, with a share of the gas kept.
 *
 * <p>Symbols: ρ density of the mass without air; ρ_f density of the foam, both in kg/m³; φ gas by volume.
 *
 * <p>Range: a foam that is not denser than the mass without air; otherwise the densities contradict each other.
 *
 * <p>Expected error: exact; the weight of the air is left out, 0.1 % of the lightest foam.
 *
 * <p>Source: definition.
 */
public final class Foam {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION =
      new Equation("overrun", "overrun = (ρ − ρf)/ρf", "definition", Confidence.EXACT);

  /** Above this gas fraction bubbles are no longer spheres: random close packing. */
  public static final Ratio CLOSE_PACKING = Ratio.ofFraction(0.64);

  /** What folding in leaves of the gas; an own estimate. */
  public static final Band<Ratio> USUAL_RETENTION =
      new Band<>(Ratio.ofPercent(60), Ratio.ofPercent(90));

  private Foam() {}

  /** Returns the volume of air per volume of the mass without air. */
  public static Outcome<Ratio> overrun(Density withoutAir, Density foam) {
    return gasFraction(withoutAir, foam)
        .map(gas -> Ratio.ofFraction(gas.fraction() / gas.complement().fraction()));
  }

  /** Returns the volume of air per volume of foam. */
  public static Outcome<Ratio> gasFraction(Density withoutAir, Density foam) {
    return foam.compareTo(withoutAir) > 0
        ? Outcome.unknown(
            Reason.CONTRADICTION,
            "a foam of %.2f g/mL is denser than its mass without air, %.2f g/mL",
            foam.gramsPerMillilitre(),
            withoutAir.gramsPerMillilitre())
        : Outcome.known(Ratio.ofFraction(
            1 - foam.kilogramsPerCubicMetre() / withoutAir.kilogramsPerCubicMetre()));
  }

  /** Returns the density of a foam with the given overrun, which is not negative. */
  public static Density density(Density withoutAir, Ratio overrun) {
    return Density.ofKilogramsPerCubicMetre(
        withoutAir.kilogramsPerCubicMetre() / (1 + overrun.fraction()));
  }

  /**
   * Returns the density after something without air is folded into a foam.
   *
   * @param mass of the foam
   * @param foam its density
   * @param withoutAir its density without air
   * @param folded mass of what is folded in
   * @param foldedDensity its density
   * @param retention share of the gas that stays, see {@link #USUAL_RETENTION}
   */
  public static Outcome<Density> afterFolding(
      Mass mass,
      Density foam,
      Density withoutAir,
      Mass folded,
      Density foldedDensity,
      Ratio retention) {
    return gasFraction(withoutAir, foam).map(gas -> {
      Volume kept = mass.at(foam).times(gas).times(retention);
      Volume all = kept.plus(mass.at(withoutAir)).plus(folded.at(foldedDensity));
      return mass.plus(folded).per(all);
    });
  }
}
