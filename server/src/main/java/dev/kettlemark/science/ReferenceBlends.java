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
