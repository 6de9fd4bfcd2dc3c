package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the solution models know of each dissolved component: molar mass, hydroxyl groups, dissociation.
 *
 * <p>Molar masses are sums of the IUPAC standard atomic weights.
 */
final class Solutes {

  static final double WATER_GRAMS_PER_MOLE = 18.01528;
  static final double SUCROSE_GRAMS_PER_MOLE = 342.297;
  static final double HEXOSE_GRAMS_PER_MOLE = 180.156;

  /** Taken for saccharides of four and more units where colligative effects matter: ten units, an own estimate. */
  private static final double HIGHER_SACCHARIDE_GRAMS_PER_MOLE = 1639.4;

  private static final int HIGHER_SACCHARIDE_HYDROXYLS = 32;

  private static final Map<Component, Solute> TABLE = table();

  private Solutes() {}

  /**
   * What dissolves.
   *
   * @param gramsPerMole molar mass in g/mol
   * @param hydroxyls groups that bind water; a carboxyl group counts as one
   * @param particles ions or molecules that one formula unit gives in dilute solution
   */
  record Solute(double gramsPerMole, int hydroxyls, int particles) {}

  /** Returns what is known of a component in solution; nothing for what does not truly dissolve. */
  static Optional<Solute> of(Component component) {
    return Optional.ofNullable(TABLE.get(component));
  }

  /** Returns moles of dissolved particles per gram of the component; nothing for what does not truly dissolve. */
  static OptionalDouble molesPerGram(Component component) {
    return of(component)
        .map(solute -> OptionalDouble.of(solute.particles() / solute.gramsPerMole()))
        .orElseGet(OptionalDouble::empty);
  }

  private static Map<Component, Solute> table() {
    Map<Component, Solute> table = new EnumMap<>(Component.class);
    Solute disaccharide = new Solute(SUCROSE_GRAMS_PER_MOLE, 8, 1);
    Solute hexose = new Solute(HEXOSE_GRAMS_PER_MOLE, 5, 1);
    Solute hexitol = new Solute(182.172, 6, 1);
    Solute disaccharideAlcohol = new Solute(344.313, 9, 1);
    table.put(Component.SUCROSE, disaccharide);
    table.put(Component.MALTOSE, disaccharide);
    table.put(Component.LACTOSE, disaccharide);
    table.put(Component.TREHALOSE, disaccharide);
    table.put(Component.GLUCOSE, hexose);
    table.put(Component.FRUCTOSE, hexose);
    table.put(Component.GALACTOSE, hexose);
    table.put(Component.MALTOTRIOSE, new Solute(504.438, 11, 1));
    table.put(
        Component.HIGHER_SACCHARIDES,
        new Solute(HIGHER_SACCHARIDE_GRAMS_PER_MOLE, HIGHER_SACCHARIDE_HYDROXYLS, 1));
    table.put(Component.SORBITOL, hexitol);
    table.put(Component.MANNITOL, hexitol);
    table.put(Component.XYLITOL, new Solute(152.146, 5, 1));
    table.put(Component.ERYTHRITOL, new Solute(122.120, 4, 1));
    table.put(Component.GLYCEROL, new Solute(92.094, 3, 1));
    table.put(Component.MALTITOL, disaccharideAlcohol);
    table.put(Component.ISOMALT, disaccharideAlcohol);
    table.put(Component.LACTITOL, disaccharideAlcohol);
    // Organic acids stand as citric acid, whose own dissociation hardly adds particles at kitchen
    // strength.
    table.put(Component.ACID, new Solute(192.124, 4, 1));
    table.put(Component.SALT, new Solute(58.443, 0, 2));
    table.put(Component.ETHANOL, new Solute(46.069, 1, 1));
    return table;
  }
}
