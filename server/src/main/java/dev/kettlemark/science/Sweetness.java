package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Ratio;

/**
 * Gives how sweet something tastes against the same mass of sucrose.
 *
 * <p>Equation: sweetness = Σ wᵢ·eᵢ.
 *
 * <p>Symbols: wᵢ mass fraction; eᵢ relative sweetness of component i in a solution of some 10 %.
 *
 * <p>Range: any composition; the sum knows no synergy, cold, acid or fat.
 *
 * <p>Expected error: the band of the published values, a fifth of the figure for most sugars.
 *
 * <p>Source: [1] ranges of published tables of relative sweetness; usual values partly from memory.
 */
public final class Sweetness {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "relative sweetness",
      "Σ w·e",
      "published ranges of relative sweetness",
      Confidence.RULE_OF_THUMB);

  private Sweetness() {}

  /** Returns the usual figure; sucrose is 100 %. */
  public static Ratio of(Composition composition) {
    return Ratio.ofFraction(composition.weighted(component -> range(component).usual));
  }

  /** Returns the figure with every component at the lower and the upper end of what is published. */
  public static Band<Ratio> bandOf(Composition composition) {
    return new Band<>(
        Ratio.ofFraction(composition.weighted(component -> range(component).low)),
        Ratio.ofFraction(composition.weighted(component -> range(component).high)));
  }

  private record Range(double low, double usual, double high) {}

  private static Range range(Component component) {
    return switch (component) {
      case SUCROSE -> new Range(1, 1, 1);
      case GLUCOSE -> new Range(0.5, 0.74, 0.8);
      case FRUCTOSE -> new Range(1.0, 1.2, 1.8);
      case GALACTOSE -> new Range(0.5, 0.6, 0.7);
      case MALTOSE -> new Range(0.33, 0.4, 0.5);
      case LACTOSE -> new Range(0.16, 0.2, 0.4);
      case TREHALOSE -> new Range(0.45, 0.45, 0.7);
      case MALTOTRIOSE -> new Range(0.2, 0.3, 0.35);
      case HIGHER_SACCHARIDES -> new Range(0.1, 0.2, 0.3);
      case SORBITOL -> new Range(0.5, 0.6, 0.7);
      case MANNITOL -> new Range(0.5, 0.6, 0.7);
      case XYLITOL -> new Range(0.9, 1.0, 1.0);
      case MALTITOL -> new Range(0.8, 0.9, 0.95);
      case ISOMALT -> new Range(0.45, 0.5, 0.65);
      case LACTITOL -> new Range(0.35, 0.38, 0.4);
      case ERYTHRITOL -> new Range(0.6, 0.65, 0.8);
      case GLYCEROL -> new Range(0.55, 0.6, 0.75);
      case WATER, STARCH, PROTEIN, FAT, FIBRE, ACID, SALT, ASH, ETHANOL, OTHER ->
        new Range(0, 0, 0);
    };
  }
}
