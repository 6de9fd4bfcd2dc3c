package dev.kettlemark.science;

import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.stream.Stream;

/** Published figures of density, heat and gel strength. */
final class PropertyChecks {

  private static final Check.Source PLATO =
      Check.Source.remembered("Plato's densities, NBS Circular 440 (1942)");
  private static final Check.Source PLATO_READ =
      Check.Source.read("Plato's densities, in a published handbook table");
  private static final Check.Source SATURATED =
      Check.Source.read("Antokolskaya, in Mohos 2010, table A2.2");
  private static final Check.Source BAUME = Check.Source.read("Mohos 2010, table A2.1");
  private static final Check.Source REFINERS_BAUME =
      Check.Source.remembered("glucose syrup makers: 43 °Bé has 80.3 % solids");
  private static final Check.Source MOLTEN =
      Check.Source.remembered("published range for molten sugar, 2.0 to 2.2");
  private static final Check.Source GELATINE =
      Check.Source.read("published table of gelatine conversion factors");

  private PropertyChecks() {}

  static List<Check> all() {
    return Stream.of(
            density(PLATO_READ, 10, 1038.1, 0.35),
            density(PLATO_READ, 20, 1081.0, 0.35),
            density(PLATO_READ, 30, 1127.0, 0.35),
            density(PLATO_READ, 40, 1176.4, 0.35),
            density(PLATO_READ, 50, 1229.6, 0.35),
            density(PLATO, 60, 1286.46, 0.35),
            density(PLATO, 70, 1347.17, 0.35),
            density(PLATO, 80, 1411.72, 0.35),
            density(PLATO, 85, 1445.39, 0.35),
            density(PLATO, 90, 1479.98, 0.35),
            density(SATURATED, 67.09, 1332.7, 5),
            MOLTEN.check(
                "specific heat",
                "molten sucrose at 140 °C",
                "kJ/(kg·K)",
                2.1,
                moltenSucrose(),
                0.1),
            baume(50, 27.5),
            baume(60, 32.5),
            baume(65, 35),
            baume(70, 37.6),
            baume(75, 40.3),
            baume(80, 42.5),
            baume(85, 44.9),
            REFINERS_BAUME.check(
                "degrees Baumé",
                "42 DE syrup of 80.3 % solids",
                "°Bé",
                43,
                Baume.ofBrix(Ratio.ofPercent(80.3)),
                0.6),
            gelatine(100, 60, 1.29),
            gelatine(60, 260, 0.48),
            gelatine(200, 160, 1.12),
            gelatine(180, 240, 0.87),
            gelatine(250, 200, 1.12),
            gelatine(200, 250, 0.89))
        .toList();
  }

  private static Check density(
      Check.Source source, double percent, double kilograms, double tolerance) {
    return source.check(
        "density without air",
        "sucrose " + percent + " % at 20 °C",
        "kg/m³",
        kilograms,
        FoodDensity.ofSyrup(Ratio.ofPercent(percent), Temperature.ofCelsius(20))
            .map(Density::kilogramsPerCubicMetre),
        tolerance);
  }

  private static Outcome<Double> moltenSucrose() {
    return HeatContent.specificHeat(ReferenceBlends.SUCROSE, Temperature.ofCelsius(140))
        .map(band -> band.high().kilojoulesPerKilogramKelvin());
  }

  private static Check baume(double brix, double degrees) {
    return BAUME.check(
        "degrees Baumé", brix + " °Bx", "°Bé", degrees, Baume.ofBrix(Ratio.ofPercent(brix)), 0.4);
  }

  private static Check gelatine(double from, double to, double factor) {
    Mass converted = GelatineStrength.byRootRule(Mass.ofGrams(1), new Bloom(from), new Bloom(to));
    return GELATINE.check(
        "gelatine by bloom",
        "factor " + Math.round(from) + " to " + Math.round(to),
        "",
        factor,
        Outcome.known(converted.grams()),
        // The table prints two decimals.
        0.006);
  }
}
