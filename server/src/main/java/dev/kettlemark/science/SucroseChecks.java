package dev.kettlemark.science;

import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.stream.Stream;

/** Published figures of pure sucrose syrups. The boiling tables contradict each other; tolerances say how far. */
final class SucroseChecks {

  private static final Check.Source HERZFELD =
      Check.Source.read("Herzfeld 1892, in Mohos 2010, table A2.3");
  private static final Check.Source NEWER =
      Check.Source.read("published solubility table, author not known");
  private static final Check.Source ANTOKOLSKAYA =
      Check.Source.read("Antokolskaya, in Mohos 2010, table A2.2");

  private SucroseChecks() {}

  static List<Check> all() {
    return Stream.of(
            table(PublishedBoiling.CLAASSEN),
            table(PublishedBoiling.BROWNE),
            table(PublishedBoiling.BROWNE_REMEMBERED),
            table(PublishedBoiling.CANDY),
            stages(),
            solubility(),
            dissolvedPerWater())
        .flatMap(checks -> checks)
        .toList();
  }

  private static Stream<Check> table(PublishedBoiling table) {
    return table.points().stream()
        .map(point -> elevation(
            table.source(),
            point.solids().percent(),
            point.aboveWater().celsius(),
            point.tolerance().celsius()));
  }

  private static Stream<Check> stages() {
    return Stream.of(
        stage("thread", 110.5, 80),
        stage("soft ball", 113.5, 85),
        stage("firm ball", 119, 87),
        stage("hard ball", 125.5, 92),
        stage("soft crack", 137.5, 95),
        stage("hard crack", 150, 99));
  }

  private static Stream<Check> solubility() {
    return Stream.of(
        charles(HERZFELD, 0, 64.18, 0.5),
        charles(HERZFELD, 20, 67.09, 0.5),
        charles(HERZFELD, 40, 70.42, 0.5),
        charles(HERZFELD, 60, 74.18, 0.5),
        charles(HERZFELD, 80, 78.36, 0.5),
        charles(HERZFELD, 100, 82.97, 0.5),
        charles(NEWER, 0, 64.44, 0.3),
        charles(NEWER, 20, 66.74, 0.3),
        charles(NEWER, 40, 70.22, 0.3),
        charles(NEWER, 60, 74.32, 0.3),
        charles(NEWER, 80, 78.74, 0.3),
        charles(NEWER, 100, 82.89, 0.3),
        charles(NEWER, 120, 86.89, 0.5),
        charles(NEWER, 140, 91.46, 1.4),
        vavrinecz(HERZFELD, 0, 64.18),
        vavrinecz(HERZFELD, 20, 67.09),
        vavrinecz(HERZFELD, 40, 70.42),
        vavrinecz(HERZFELD, 60, 74.18),
        vavrinecz(HERZFELD, 80, 78.36),
        vavrinecz(HERZFELD, 100, 82.97),
        vavrinecz(NEWER, 0, 64.44),
        vavrinecz(NEWER, 20, 66.74),
        vavrinecz(NEWER, 40, 70.22),
        vavrinecz(NEWER, 60, 74.32),
        vavrinecz(NEWER, 80, 78.74),
        vavrinecz(NEWER, 100, 82.89));
  }

  private static Stream<Check> dissolvedPerWater() {
    return Stream.of(
        antokolskaya(0, 179.2, 0.5),
        antokolskaya(20, 203.9, 0.5),
        // Lies off the line through its own neighbours by a tenth of a percent point.
        antokolskaya(25, 211.4, 0.6),
        antokolskaya(40, 238.1, 0.5),
        antokolskaya(60, 287.3, 0.5),
        antokolskaya(80, 362.1, 0.5),
        antokolskaya(100, 487.2, 0.5));
  }

  /** The table prints grams of sucrose to 100 g of water; as a share they compare with all other temperatures. */
  private static Check antokolskaya(double celsius, double perHundredWater, double tolerance) {
    return charles(
        ANTOKOLSKAYA, celsius, 100 * perHundredWater / (100 + perHundredWater), tolerance);
  }

  private static Check elevation(
      Check.Source source, double percent, double above, double tolerance) {
    Outcome<Double> computed = Outcome.both(
        boilingPoint(percent),
        SaturationLine.boilingPoint(Pressure.STANDARD_ATMOSPHERE),
        (syrup, water) -> syrup.minus(water).celsius());
    return source.check(
        "boiling of syrup",
        "sucrose " + percent + " %, above water",
        "°C",
        above,
        computed,
        tolerance);
  }

  private static Outcome<Temperature> boilingPoint(double percent) {
    return SyrupBoiling.boilingPoint(
        ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 100 - percent),
        Pressure.STANDARD_ATMOSPHERE);
  }

  private static Check stage(String name, double celsius, double percent) {
    Outcome<Double> solids = SyrupBoiling.waterLeft(
            ReferenceBlends.SUCROSE, Temperature.ofCelsius(celsius), Pressure.STANDARD_ATMOSPHERE)
        .map(water -> water.complement().percent());
    return PublishedBoiling.STAGES
        .source()
        .check(
            "boiling of syrup", name + ", solids at " + celsius + " °C", "%", percent, solids, 2);
  }

  private static Check charles(
      Check.Source source, double celsius, double percent, double tolerance) {
    return source.check(
        "sucrose solubility",
        "Charles at " + celsius + " °C",
        "%",
        percent,
        SucroseSolubility.charles(Temperature.ofCelsius(celsius)).map(Ratio::percent),
        tolerance);
  }

  private static Check vavrinecz(Check.Source source, double celsius, double percent) {
    return source.check(
        "sucrose solubility",
        "Vavrinecz at " + celsius + " °C",
        "%",
        percent,
        SucroseSolubility.vavrinecz(Temperature.ofCelsius(celsius)).map(Ratio::percent),
        0.5);
  }
}
