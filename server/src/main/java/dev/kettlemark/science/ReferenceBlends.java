package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Map;

/** The dry blends for which published figures exist. */
final class ReferenceBlends {

  static final Composition SUCROSE = Composition.of(Component.SUCROSE);
  static final Composition GLUCOSE = Composition.of(Component.GLUCOSE);
  static final Composition FRUCTOSE = Composition.of(Component.FRUCTOSE);
  static final Composition SORBITOL = Composition.of(Component.SORBITOL);

  static final Composition INVERT =
      Composition.ofPercents(Map.of(Component.GLUCOSE, 50.0, Component.FRUCTOSE, 50.0));

  /** Acid-converted glucose syrup of 42 DE; typical split of the dry solids, from memory of suppliers' tables. */
  static final Composition SYRUP_42 = syrup(19, 14, 12, 55);

  /** Glucose syrup of 60 to 63 DE, likewise. */
  static final Composition SYRUP_62 = syrup(37, 31, 12, 20);

  static final Composition WITH_GLUCOSE = mix(85, SUCROSE, 15, GLUCOSE);
  static final Composition HARD_CANDY = mix(60, SUCROSE, 40, SYRUP_42);
  static final Composition HALF_INVERT = mix(50, SUCROSE, 50, INVERT);

  /** Agave syrup without its water: 55.6 fructose and 12.4 glucose to 8.4 longer saccharides. */
  static final Composition AGAVE = Composition.ofMasses(Map.of(
      Component.FRUCTOSE, Mass.ofGrams(55.6),
      Component.GLUCOSE, Mass.ofGrams(12.4),
      Component.MALTOTRIOSE, Mass.ofGrams(8.4)));

  /** The blends by the names that tables of figures use for them. */
  static final Map<String, Composition> BY_NAME = Map.ofEntries(
      Map.entry("sucrose", SUCROSE),
      Map.entry("glucose", GLUCOSE),
      Map.entry("fructose", FRUCTOSE),
      Map.entry("maltose", Composition.of(Component.MALTOSE)),
      Map.entry("lactose", Composition.of(Component.LACTOSE)),
      Map.entry("sorbitol", SORBITOL),
      Map.entry("invert", INVERT),
      Map.entry("42 DE", SYRUP_42),
      Map.entry("62 DE", SYRUP_62),
      Map.entry("85:15 sucrose:glucose", WITH_GLUCOSE),
      Map.entry("60:40 sucrose:42 DE", HARD_CANDY),
      Map.entry("50:50 sucrose:invert", HALF_INVERT),
      Map.entry("agave", AGAVE));

  /** Honey without its water, after USDA SR26, food 19296; the split of the sugars is from memory. */
  static final Composition HONEY = dry(Composition.ofPercents(Map.of(
      Component.WATER, 17.10,
      Component.SUCROSE, 0.89,
      Component.GLUCOSE, 35.75,
      Component.FRUCTOSE, 40.94,
      Component.MALTOSE, 1.44,
      Component.GALACTOSE, 3.10,
      Component.OTHER, 0.78)));

  private ReferenceBlends() {}

  /** Returns a caramel of the given syrup with equal sucrose, 12 % fat and 3 % milk protein, without its water. */
  static Composition caramel(Composition syrup) {
    return Composition.mix(List.of(
        portion(42.5, SUCROSE),
        portion(42.5, syrup),
        portion(12, Composition.of(Component.FAT)),
        portion(3, Composition.of(Component.PROTEIN))));
  }

  static Composition mix(double share, Composition one, double otherShare, Composition other) {
    return Composition.mix(List.of(portion(share, one), portion(otherShare, other)));
  }

  static Composition named(String name) {
    Composition blend = BY_NAME.get(name);
    if (blend == null) {
      throw new IllegalArgumentException("no blend is called " + name);
    }
    return blend;
  }

  static Composition withWater(Composition dry, double percent) {
    return dry.withWaterFraction(Ratio.ofPercent(percent));
  }

  private static Portion portion(double grams, Composition composition) {
    return new Portion(Mass.ofGrams(grams), composition);
  }

  private static Composition syrup(double glucose, double maltose, double three, double higher) {
    return Composition.ofPercents(Map.of(
        Component.GLUCOSE, glucose,
        Component.MALTOSE, maltose,
        Component.MALTOTRIOSE, three,
        Component.HIGHER_SACCHARIDES, higher));
  }

  private static Composition dry(Composition composition) {
    return composition.dry().orElseThrow();
  }
}
