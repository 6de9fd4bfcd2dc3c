package dev.kettlemark.science;

import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.stream.Stream;

/** Published figures of pure sucrose syrups. The boiling tables contradict each other; tolerances say how far. */
final class SucroseChecks {

  private static final Check.Source CANE = Check.Source.remembered(
      "Claassen's table of cane sugar at 760 mm, in Spencer and Meade, Cane Sugar Handbook");
  private static final Check.Source BROWNE = Check.Source.read(
      "Browne 1912, Handbook of Sugar Analysis, table after Gerlach; too high from 66 % up");
  private static final Check.Source CANDY =
      Check.Source.remembered("McGee 2004, graph of boiling sugar syrups");
  private static final Check.Source STAGES =
      Check.Source.read("trade's pairs of stage and solids, two reference pages");
  private static final Check.Source HERZFELD =
      Check.Source.read("Herzfeld 1892, in Mohos 2010, table A2.3");
  private static final Check.Source NEWER =
      Check.Source.read("published solubility table, author not known");

  private SucroseChecks() {}

  static List<Check> all() {
    return Stream.of(cane(), browne(), candy(), stages(), solubility())
        .flatMap(checks -> checks)
        .toList();
  }

  private static Stream<Check> cane() {
    return Stream.of(
        elevation(CANE, 10, 0.1, 0.3),
        elevation(CANE, 20, 0.3, 0.3),
        elevation(CANE, 30, 0.6, 0.3),
        elevation(CANE, 40, 1.05, 0.3),
        elevation(CANE, 50, 1.8, 0.3),
        elevation(CANE, 60, 3.0, 0.3),
        elevation(CANE, 65, 3.8, 0.3),
        elevation(CANE, 70, 5.1, 0.3),
        elevation(CANE, 75, 7.0, 0.3),
        elevation(CANE, 80, 9.4, 1.1),
        elevation(CANE, 85, 13.0, 1.1),
        elevation(CANE, 90, 19.6, 3),
        elevation(CANE, 94, 30.5, 5));
  }

  private static Stream<Check> browne() {
    return Stream.of(
        elevation(BROWNE, 10, 0.4, 0.5),
        elevation(BROWNE, 20, 0.6, 0.5),
        elevation(BROWNE, 40, 1.5, 0.5),
        elevation(BROWNE, 50, 2.0, 0.5),
        elevation(BROWNE, 62, 3.4, 0.5),
        elevation(BROWNE, 66, 4.8, 1),
        elevation(BROWNE, 70, 6.5, 3),
        elevation(BROWNE, 76, 9.4, 3),
        elevation(BROWNE, 80, 12.0, 3),
        elevation(BROWNE, 82, 13.9, 3.5));
  }

  private static Stream<Check> candy() {
    return Stream.of(
        boiling(CANDY, 90, 123, 2),
        boiling(CANDY, 95, 140, 2),
        boiling(CANDY, 97, 151, 2),
        boiling(CANDY, 98.2, 160, 5),
        boiling(CANDY, 99.5, 166, 5));
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
        charles(NEWER, 60, 74.32, 0.3),
        charles(NEWER, 100, 82.89, 0.3),
        charles(NEWER, 120, 86.89, 0.5),
        charles(NEWER, 140, 91.46, 1.4),
        vavrinecz(HERZFELD, 20, 67.09),
        vavrinecz(HERZFELD, 60, 74.18),
        vavrinecz(HERZFELD, 100, 82.97),
        vavrinecz(NEWER, 40, 70.22),
        vavrinecz(NEWER, 80, 78.74));
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

  private static Check boiling(
      Check.Source source, double percent, double celsius, double tolerance) {
    return source.check(
        "boiling of syrup",
        "sucrose " + percent + " %",
        "°C",
        celsius,
        boilingPoint(percent).map(Temperature::celsius),
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
    return STAGES.check(
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
