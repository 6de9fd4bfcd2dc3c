package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Confidence;

/**
 * Gives the energy of 100 g of food as a label states it.
 *
 * <p>Equation: energy = Σ gᵢ·fᵢ.
 *
 * <p>Symbols: gᵢ grams of component i in 100 g; fᵢ the factor of the law in kJ/g or kcal/g.
 *
 * <p>Range: any composition. What the analysis left unnamed counts as carbohydrate, the cautious side.
 *
 * <p>Expected error: exact by law; food tables that use factors per food differ, by 8 % for nuts and far more for cocoa.
 *
 * <p>Source: [1] Regulation (EU) No 1169/2011, annex XIV. [2] 21 CFR 101.9(c)(1)(i)(B) and (F); polyol factors from
 * memory.
 */
public final class FoodEnergy {

  /** Names the European sum in a derivation. */
  public static final Equation EUROPEAN = new Equation(
      "energy for the European label",
      "Σ g·f with 17/4 carbohydrate, 10/2.4 polyol, 17/4 protein, 37/9 fat, 29/7 ethanol, 13/3 acid, 8/2 fibre",
      "Regulation (EU) No 1169/2011, annex XIV",
      Confidence.STANDARD);

  /** Names the American sum in a derivation. */
  public static final Equation AMERICAN = new Equation(
      "energy for the American label",
      "4·carbohydrate + 4·protein + 9·fat + 7·ethanol, polyols by their own factors",
      "21 CFR 101.9(c)(1)(i), polyol factors from memory",
      Confidence.STANDARD);

  private static final double GRAMS = 100;

  private FoodEnergy() {}

  /** Returns kilojoules per 100 g for the European label; never converted from kilocalories. */
  public static double europeanKilojoules(Composition composition) {
    return GRAMS * composition.weighted(FoodEnergy::europeanKilojoulesPerGram);
  }

  /** Returns kilocalories per 100 g for the European label. */
  public static double europeanKilocalories(Composition composition) {
    return GRAMS * composition.weighted(FoodEnergy::europeanKilocaloriesPerGram);
  }

  /** Returns kilocalories per 100 g for the American label, fibre counted as other carbohydrate. */
  public static double americanKilocalories(Composition composition) {
    return GRAMS * composition.weighted(FoodEnergy::americanKilocaloriesPerGram);
  }

  private static double europeanKilojoulesPerGram(Component component) {
    return switch (component.family()) {
      case WATER, MINERAL -> 0;
      case SUGAR, OLIGOSACCHARIDE, STARCH, OTHER, PROTEIN -> 17;
      case POLYOL -> component == Component.ERYTHRITOL ? 0 : 10;
      case FAT -> 37;
      case FIBRE -> 8;
      case ACID -> 13;
      case ETHANOL -> 29;
    };
  }

  private static double europeanKilocaloriesPerGram(Component component) {
    return switch (component.family()) {
      case WATER, MINERAL -> 0;
      case SUGAR, OLIGOSACCHARIDE, STARCH, OTHER, PROTEIN -> 4;
      case POLYOL -> component == Component.ERYTHRITOL ? 0 : 2.4;
      case FAT -> 9;
      case FIBRE -> 2;
      case ACID -> 3;
      case ETHANOL -> 7;
    };
  }

  private static double americanKilocaloriesPerGram(Component component) {
    return switch (component) {
      case WATER, SALT, ASH -> 0;
      case FAT -> 9;
      case ETHANOL -> 7;
      case ISOMALT, LACTITOL -> 2.0;
      case XYLITOL -> 2.4;
      case MALTITOL -> 2.1;
      case SORBITOL -> 2.6;
      case MANNITOL -> 1.6;
      case ERYTHRITOL -> 0.2;
      case GLYCEROL -> 4.32;
      default -> 4;
    };
  }
}
