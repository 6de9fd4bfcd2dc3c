package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What laws and their tables say: energy factors, egg, growth. */
final class LabelChecks {

  private static final Check.Source EUROPE =
      Check.Source.read("Regulation (EU) No 1169/2011, annex XIV");
  private static final Check.Source AMERICA = Check.Source.read("21 CFR 101.9(c)(1)(i)");
  private static final Check.Source AMERICA_POLYOLS =
      Check.Source.remembered("21 CFR 101.9(c)(1)(i)(F)");
  private static final Check.Source GENERAL_FACTORS =
      Check.Source.recomputed("general factors on compositions of USDA SR26, computed apart");
  private static final Check.Source LIQUID_EGG = Check.Source.read("9 CFR 590.570");
  private static final Check.Source DRIED_EGG = Check.Source.read("9 CFR 590.575");
  private static final Check.Source EGG_ADVICE =
      Check.Source.remembered("U.S. Food Code 2022 and advice to consumers");
  private static final Check.Source EGG_PROTEINS =
      Check.Source.read("published denaturation temperatures of egg-white proteins");
  private static final Check.Source BEUCHAT =
      Check.Source.read("Beuchat 1981, table of least water activities");
  private static final Check.Source SHELF = Check.Source.remembered("21 CFR 113.3(n) and 114.3");

  /** Foods of USDA SR26 as printed, with both sums computed apart and the energy that the table prints itself. */
  static final List<Food> FOODS = List.of(
      new Food("sucrose, NDB 19335", 0.02, 0, 0, 99.98, 0, 400, 400, 387),
      new Food("honey, NDB 19296", 17.10, 0.30, 0, 82.40, 0.2, 331, 330, 304),
      new Food("agave syrup, NDB 19912", 22.94, 0.09, 0.45, 76.37, 0.2, 310, 309, 310),
      new Food("egg white, NDB 01124", 87.57, 10.90, 0.17, 0.73, 0, 48, 48, 52),
      new Food("almonds, NDB 12061", 4.41, 21.15, 49.93, 21.55, 12.5, 620, 595, 579),
      new Food("cocoa powder, NDB 19165", 3.00, 19.60, 13.70, 57.90, 33.2, 433, 367, 228),
      new Food("dark chocolate, NDB 19904", 1.37, 7.79, 42.63, 45.90, 10.9, 598, 577, 598),
      new Food("milk chocolate, NDB 19120", 1.50, 7.65, 29.66, 59.40, 3.4, 535, 528, 535),
      new Food("butter, NDB 01145", 17.94, 0.85, 81.11, 0.06, 0, 734, 734, 717),
      new Food("skim milk powder, NDB 01091", 3.16, 36.16, 0.77, 51.98, 0, 359, 359, 362),
      new Food("gelatine, NDB 19177", 13.00, 85.60, 0.10, 0, 0, 343, 343, 335));

  /**
   * A food in percent by mass; what is left is ash.
   *
   * @param carbohydrate by difference, fibre included
   * @param american kcal to 100 g, computed apart by the American factors
   * @param european kcal to 100 g, computed apart by the European factors
   * @param printed kcal to 100 g as the table has it
   */
  record Food(
      String name,
      double water,
      double protein,
      double fat,
      double carbohydrate,
      double fibre,
      double american,
      double european,
      double printed) {

    Composition composition() {
      return Composition.ofPercents(Map.of(
          Component.WATER, water,
          Component.PROTEIN, protein,
          Component.FAT, fat,
          Component.STARCH, carbohydrate - fibre,
          Component.FIBRE, fibre,
          Component.ASH, Math.max(0, 100 - water - protein - fat - carbohydrate)));
    }
  }

  private LabelChecks() {}

  static List<Check> all() {
    return Stream.of(european(), american(), foods(), egg(), growth())
        .flatMap(checks -> checks)
        .toList();
  }

  private static Stream<Check> european() {
    return Stream.of(
            Map.entry(Component.SUCROSE, new double[] {17, 4}),
            Map.entry(Component.SORBITOL, new double[] {10, 2.4}),
            Map.entry(Component.PROTEIN, new double[] {17, 4}),
            Map.entry(Component.FAT, new double[] {37, 9}),
            Map.entry(Component.ETHANOL, new double[] {29, 7}),
            Map.entry(Component.ACID, new double[] {13, 3}),
            Map.entry(Component.FIBRE, new double[] {8, 2}),
            Map.entry(Component.ERYTHRITOL, new double[] {0, 0}))
        .flatMap(factor -> {
          Composition pure = Composition.of(factor.getKey());
          String subject = "European factor of " + factor.getKey().word();
          return Stream.of(
              EUROPE.check(
                  "energy",
                  subject,
                  "kJ/g",
                  factor.getValue()[0],
                  FoodEnergy.europeanKilojoules(pure) / 100,
                  1e-9),
              EUROPE.check(
                  "energy",
                  subject,
                  "kcal/g",
                  factor.getValue()[1],
                  FoodEnergy.europeanKilocalories(pure) / 100,
                  1e-9));
        });
  }

  private static Stream<Check> american() {
    return Stream.of(
        american(AMERICA, Component.SUCROSE, 4),
        american(AMERICA, Component.PROTEIN, 4),
        american(AMERICA, Component.FAT, 9),
        american(AMERICA, Component.FIBRE, 4),
        american(AMERICA_POLYOLS, Component.ISOMALT, 2.0),
        american(AMERICA_POLYOLS, Component.LACTITOL, 2.0),
        american(AMERICA_POLYOLS, Component.XYLITOL, 2.4),
        american(AMERICA_POLYOLS, Component.MALTITOL, 2.1),
        american(AMERICA_POLYOLS, Component.SORBITOL, 2.6),
        american(AMERICA_POLYOLS, Component.MANNITOL, 1.6),
        american(AMERICA_POLYOLS, Component.ERYTHRITOL, 0.2),
        american(AMERICA_POLYOLS, Component.GLYCEROL, 4.32));
  }

  private static Check american(Check.Source source, Component component, double factor) {
    return source.check(
        "energy",
        "American factor of " + component.word(),
        "kcal/g",
        factor,
        FoodEnergy.americanKilocalories(Composition.of(component)) / 100,
        1e-9);
  }

  private static Stream<Check> foods() {
    return FOODS.stream()
        .flatMap(food -> Stream.of(
            GENERAL_FACTORS.check(
                "energy",
                food.name() + ", American sum",
                "kcal/100 g",
                food.american(),
                FoodEnergy.americanKilocalories(food.composition()),
                1),
            GENERAL_FACTORS.check(
                "energy",
                food.name() + ", European sum",
                "kcal/100 g",
                food.european(),
                FoodEnergy.europeanKilocalories(food.composition()),
                1)));
  }

  private static Stream<Check> egg() {
    return Stream.of(
        egg(LIQUID_EGG, "albumen held 3.5 min", 56.7, EggSafety.ALBUMEN_HELD_3_5_MINUTES),
        egg(LIQUID_EGG, "albumen held 6.2 min", 55.6, EggSafety.ALBUMEN_HELD_6_2_MINUTES),
        egg(LIQUID_EGG, "whole egg held 3.5 min", 60.0, EggSafety.WHOLE_EGG_HELD_3_5_MINUTES),
        egg(LIQUID_EGG, "yolk held 3.5 min, 142 °F", 61.1, EggSafety.YOLK_HELD_3_5_MINUTES),
        egg(DRIED_EGG, "spray-dried white held 7 days", 54.4, EggSafety.DRIED_WHITE_HELD_7_DAYS),
        egg(EGG_ADVICE, "safe at once, 160 °F", 71.1, EggSafety.SAFE_AT_ONCE),
        egg(EGG_PROTEINS, "ovotransferrin sets", 61, EggSafety.OVOTRANSFERRIN_SETS),
        egg(EGG_PROTEINS, "ovalbumin sets", 84.5, EggSafety.OVALBUMIN_SETS));
  }

  private static Check egg(Check.Source source, String subject, double celsius, Temperature limit) {
    return source.check("egg", subject, "°C", celsius, limit.celsius(), 0.06);
  }

  private static Stream<Check> growth() {
    Stream<Check> limits = Stream.of(
            Map.entry(GrowthLimit.MOST_BACTERIA, new Band<>(0.91, 0.91)),
            Map.entry(GrowthLimit.MOST_YEASTS, new Band<>(0.87, 0.88)),
            Map.entry(GrowthLimit.STAPHYLOCOCCUS, new Band<>(0.86, 0.86)),
            Map.entry(GrowthLimit.MOST_MOULDS, new Band<>(0.80, 0.80)),
            Map.entry(GrowthLimit.HALOPHILES, new Band<>(0.75, 0.75)),
            Map.entry(GrowthLimit.DRY_MOULDS, new Band<>(0.61, 0.65)),
            Map.entry(GrowthLimit.OSMOPHILIC_YEASTS, new Band<>(0.60, 0.61)))
        .map(limit -> BEUCHAT.check(
            "growth",
            limit.getKey().group(),
            "aw",
            // Where the table prints a range, its lower end protects.
            limit.getValue().low(),
            limit.getKey().leastActivity().fraction(),
            1e-9));
    return Stream.concat(
        limits,
        Stream.of(
            BEUCHAT.check(
                "growth",
                "nothing grows below",
                "aw",
                0.60,
                fraction(GrowthLimit.NOTHING_GROWS),
                1e-9),
            SHELF.check(
                "growth",
                "low-acid rules do not apply up to",
                "aw",
                0.85,
                fraction(GrowthLimit.SHELF_STABLE),
                1e-9)));
  }

  private static double fraction(Ratio activity) {
    return activity.fraction();
  }
}
