package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Mass;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Compositions drawn from a repeatable source, so that a failure can be looked at again. */
final class RandomBlends {

  private static final List<Component> SWEET = List.of(
      Component.SUCROSE,
      Component.GLUCOSE,
      Component.FRUCTOSE,
      Component.MALTOSE,
      Component.LACTOSE,
      Component.TREHALOSE,
      Component.MALTOTRIOSE,
      Component.HIGHER_SACCHARIDES,
      Component.SORBITOL,
      Component.GLYCEROL,
      Component.ISOMALT);

  private RandomBlends() {}

  /** Returns dry sugars and polyols with a little protein, fat and salt. */
  static Composition syrup(Random random) {
    Map<Component, Mass> masses = new EnumMap<>(Component.class);
    for (Component component : SWEET) {
      if (random.nextInt(3) == 0) {
        masses.put(component, Mass.ofGrams(100 * random.nextDouble()));
      }
    }
    masses.put(Component.SUCROSE, Mass.ofGrams(20 + 100 * random.nextDouble()));
    masses.put(Component.PROTEIN, Mass.ofGrams(5 * random.nextDouble()));
    masses.put(Component.FAT, Mass.ofGrams(20 * random.nextDouble()));
    masses.put(Component.SALT, Mass.ofGrams(random.nextDouble()));
    return Composition.ofMasses(masses);
  }

  /** Returns anything at all, water included. */
  static Composition anything(Random random) {
    Map<Component, Mass> masses = new EnumMap<>(Component.class);
    for (Component component : Component.values()) {
      if (random.nextBoolean()) {
        masses.put(component, Mass.ofGrams(100 * random.nextDouble()));
      }
    }
    masses.put(Component.WATER, Mass.ofGrams(1 + 50 * random.nextDouble()));
    masses.put(Component.SUCROSE, Mass.ofGrams(1 + 50 * random.nextDouble()));
    return Composition.ofMasses(masses);
  }
}
