package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import java.util.function.ToIntFunction;

/**
 * Says how much water a mixture of solids holds, compared with the same mass of sucrose at the same water activity.
 *
 * <p>Equation: W = W_sucrose(a, T)·Σ sᵢ·rᵢ(a), rᵢ(a) = r₀ᵢ + (r∞ᵢ − r₀ᵢ)·a⁷.
 *
 * <p>Symbols: W kg of water per kg of dry solids; a water activity; sᵢ share of the dry solids; r₀ᵢ hydroxyl groups per
 * gram over those of sucrose; r∞ᵢ particles per gram over those of sucrose.
 *
 * <p>Shape: any composition; its own water is ignored.
 *
 * <p>Range: amorphous or dissolved solids. Crystals hold no water, which a composition cannot tell. Protein, starch,
 * fibre and the unnamed rest count 0.4, fat nothing, sodium chloride 9, other minerals half of potassium
 * chloride, since much of them is bound.
 *
 * <p>Expected error: 0.012 in water activity on six published points of honey, sugars and invert syrup.
 *
 * <p>Source: [1] R. H. Stokes and R. A. Robinson (1966), J. Phys. Chem. 70, 2126, for the rule of mixing, from memory;
 * the ratios rᵢ are an own estimate, with the exponent 7 fitted to glucose, fructose and honey, so those rows of the table are no independent check.
 */
public final class WaterHolding {

  /** Where neither limit is known: between 0.3 and 0.5 in the trade's practice. */
  private static final double BIOPOLYMER = 0.4;

  /** Fits brine of 5 % at activity 0.970 and saturated brine at 0.753; an own estimate. */
  private static final double SODIUM_CHLORIDE = 9.0;

  /** Half of potassium chloride, 2·342.297/74.55; an own estimate. */
  private static final double MINERALS = 4.6;

  private static final Solutes.Solute SUCROSE =
      new Solutes.Solute(Solutes.SUCROSE_GRAMS_PER_MOLE, 8, 1);

  /** Below this share of sucrose's water-holding the solids are mostly fat, and the rule says nothing. */
  private static final double LEAST_HOLDING = 0.05;

  private final double dryLimit;
  private final double dilutePart;

  private WaterHolding(double dryLimit, double dilutePart) {
    this.dryLimit = dryLimit;
    this.dilutePart = dilutePart;
  }

  /** Returns the rule for the solids of a composition. */
  static WaterHolding of(Composition composition) {
    double solids = composition.weighted(component -> component == Component.WATER ? 0 : 1);
    if (solids == 0) {
      return new WaterHolding(0, 0);
    }
    double dry = composition.weighted(WaterHolding::dryRatio) / solids;
    double dilute = composition.weighted(WaterHolding::diluteRatio) / solids;
    return new WaterHolding(dry, dilute - dry);
  }

  /** Returns r of a component close to dryness; sucrose is 1. */
  public static double dryRatio(Component component) {
    return switch (component) {
      case WATER, FAT -> 0;
      case PROTEIN, STARCH, FIBRE, OTHER -> BIOPOLYMER;
      case ASH -> MINERALS;
      case SALT -> SODIUM_CHLORIDE;
      default -> ratio(component, Solutes.Solute::hydroxyls);
    };
  }

  /** Returns r of a component in dilute solution; sucrose is 1. */
  public static double diluteRatio(Component component) {
    return switch (component) {
      case WATER, FAT -> 0;
      case PROTEIN, STARCH, FIBRE, OTHER -> BIOPOLYMER;
      case ASH -> MINERALS;
      case SALT -> SODIUM_CHLORIDE;
      default -> ratio(component, Solutes.Solute::particles);
    };
  }

  private static double ratio(Component component, ToIntFunction<Solutes.Solute> count) {
    Solutes.Solute solute = Solutes.of(component).orElseThrow();
    return count.applyAsInt(solute)
        / solute.gramsPerMole()
        / (count.applyAsInt(SUCROSE) / SUCROSE.gramsPerMole());
  }

  /** Returns Σ sᵢ·rᵢ at a water activity. */
  double at(double activity) {
    double squared = activity * activity;
    return dryLimit + dilutePart * squared * squared * squared * activity;
  }

  /** Tells whether enough of the solids dissolves for the rule to speak. */
  boolean isMeaningful() {
    return dryLimit >= LEAST_HOLDING;
  }
}
