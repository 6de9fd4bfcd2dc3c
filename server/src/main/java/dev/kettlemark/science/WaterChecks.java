package dev.kettlemark.science;

import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.SpecificEnergy;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.stream.Stream;

/** Published figures of pure water and air. */
final class WaterChecks {

  private static final Check.Source TABLE_35 =
      Check.Source.remembered("IAPWS R7-97(2012), table 35");
  private static final Check.Source TABLE_36 =
      Check.Source.remembered("IAPWS R7-97(2012), table 36");
  private static final Check.Source ATMOSPHERE =
      Check.Source.read("ISO 2533:1975, recomputed by a published psychrometric library");
  private static final Check.Source STEAM =
      Check.Source.read("IAPWS-IF97, computed by a published steam library");
  private static final Check.Source ASHRAE =
      Check.Source.read("Hyland and Wexler, computed by a published psychrometric library");
  private static final Check.Source RULE = Check.Source.read("McGee 2004: 1 °C per 300 m");

  private static final Check.Source STEAM_APART =
      Check.Source.recomputed("IAPWS-IF97, region 4, computed apart");
  private static final Check.Source ATMOSPHERE_APART =
      Check.Source.recomputed("ISO 2533:1975 with IAPWS-IF97, computed apart");

  /** Printed with nine digits. */
  private static final double RELATIVE = 1e-8;

  /** By how much sound formulations of the saturation line differ up to 150 °C. */
  private static final double FORMULATIONS = 2.1e-4;

  private WaterChecks() {}

  static List<Check> all() {
    return Stream.of(published(), vapour(), mountains())
        .flatMap(checks -> checks)
        .toList();
  }

  private static Stream<Check> published() {
    return Stream.of(
        saturationPressure(300, 0.353658941e-2),
        saturationPressure(500, 0.263889776e1),
        saturationPressure(600, 0.123443146e2),
        boilingKelvin(0.1, 0.372755919e3),
        boilingKelvin(1, 0.453035632e3),
        boilingKelvin(10, 0.584149488e3),
        atmosphere(500, 95_460.81),
        atmosphere(1000, 89_874.52),
        atmosphere(1609, 83_431.04),
        atmosphere(2000, 79_495.12),
        atmosphere(3000, 70_108.42),
        RULE.check(
            "boiling point of water", "drop over 300 m", "°C", 1.0, dropOver300Metres(), 0.02),
        latentHeat(20, 2453.5),
        latentHeat(60, 2357.7),
        latentHeat(100, 2256.5),
        latentHeat(120, 2202.1),
        latentHeat(150, 2113.7),
        waterDensity(20, 998.16),
        waterDensity(60, 983.18),
        waterDensity(100, 958.35),
        vapour(STEAM, 20, 2.339214766776896, RELATIVE),
        vapour(STEAM, 100, 101.417977921310, RELATIVE),
        vapour(STEAM, 120, 198.665399739302, RELATIVE),
        vapour(STEAM, 127, 246.877629362038, RELATIVE),
        vapour(STEAM, 150, 476.101381081492, RELATIVE),
        vapour(ASHRAE, 20, 2.33880, FORMULATIONS),
        vapour(ASHRAE, 100, 101.4187, FORMULATIONS),
        vapour(ASHRAE, 120, 198.6852, FORMULATIONS),
        vapour(ASHRAE, 150, 476.1979, FORMULATIONS),
        waterHeat(20, 4.185),
        waterHeat(100, 4.217),
        waterHeat(150, 4.310));
  }

  private static Stream<Check> vapour() {
    return FigureGrid.of("""
            °C  | kPa
            20  | 2.33921
            25  | 3.16975
            60  | 19.9458
            80  | 47.4147
            100 | 101.41798
            105 | 120.902
            110 | 143.376
            112 | 153.277
            115 | 169.177
            118 | 186.404
            120 | 198.665
            127 | 246.878
            130 | 270.260
            140 | 361.501
            150 | 476.101
            160 | 618.139
            """)
        .cells()
        .map(cell ->
            vapour(STEAM_APART, cell.row(), cell.figure(), cell.lastDigit() / cell.figure()));
  }

  private static Stream<Check> mountains() {
    return FigureGrid.of("""
            m    | Pa       | °C
            0    | 101325.0 | 99.974
            305  | 97714.2  | 98.961
            500  | 95460.8  | 98.312
            1000 | 89874.6  | 96.649
            1500 | 84556.0  | 94.983
            1609 | 83431.1  | 94.620
            2000 | 79495.2  | 93.315
            2240 | 77154.7  | 92.514
            4000 | 61640.2  | 86.619
            """)
        .cells()
        .map(cell -> cell.column().equals("Pa")
            ? ATMOSPHERE_APART.check(
                "standard atmosphere",
                "pressure at " + Math.round(cell.row()) + " m",
                "Pa",
                cell.figure(),
                StandardAtmosphere.pressureAt(Length.ofMetres(cell.row())).map(Pressure::pascals),
                cell.lastDigit())
            : ATMOSPHERE_APART.check(
                "boiling point of water",
                "water at " + Math.round(cell.row()) + " m",
                "°C",
                cell.figure(),
                boilingCelsiusAt(cell.row()),
                cell.lastDigit()));
  }

  private static Check vapour(
      Check.Source source, double celsius, double kilopascals, double relative) {
    return source.check(
        "saturation line",
        "pressure at " + celsius + " °C",
        "kPa",
        kilopascals,
        SaturationLine.pressureAt(Temperature.ofCelsius(celsius)).map(Pressure::kilopascals),
        kilopascals * relative);
  }

  private static Check waterHeat(double celsius, double kilojoules) {
    return STEAM.check(
        "specific heat",
        "water at " + celsius + " °C, by Choi and Okos",
        "kJ/(kg·K)",
        kilojoules,
        ChoiOkos.WATER.specificHeat(celsius),
        0.03);
  }

  private static Check saturationPressure(double kelvin, double megapascals) {
    return TABLE_35.check(
        "saturation line",
        "pressure at " + kelvin + " K",
        "MPa",
        megapascals,
        SaturationLine.pressureAt(Temperature.ofKelvin(kelvin)).map(Pressure::megapascals),
        megapascals * RELATIVE);
  }

  private static Check boilingKelvin(double megapascals, double kelvin) {
    return TABLE_36.check(
        "saturation line",
        "temperature at " + megapascals + " MPa",
        "K",
        kelvin,
        SaturationLine.boilingPoint(Pressure.ofMegapascals(megapascals)).map(Temperature::kelvin),
        kelvin * RELATIVE);
  }

  private static Check atmosphere(double metres, double pascals) {
    return ATMOSPHERE.check(
        "standard atmosphere",
        "pressure at " + Math.round(metres) + " m",
        "Pa",
        pascals,
        StandardAtmosphere.pressureAt(Length.ofMetres(metres)).map(Pressure::pascals),
        1);
  }

  private static Outcome<Double> dropOver300Metres() {
    return Outcome.both(boilingCelsiusAt(0), boilingCelsiusAt(300), (low, high) -> low - high);
  }

  private static Outcome<Double> boilingCelsiusAt(double metres) {
    return StandardAtmosphere.pressureAt(Length.ofMetres(metres))
        .flatMap(SaturationLine::boilingPoint)
        .map(Temperature::celsius);
  }

  private static Check latentHeat(double celsius, double kilojoules) {
    return STEAM.check(
        "latent heat",
        "water at " + celsius + " °C",
        "kJ/kg",
        kilojoules,
        LatentHeat.ofWater(Temperature.ofCelsius(celsius))
            .map(SpecificEnergy::kilojoulesPerKilogram),
        2.4);
  }

  private static Check waterDensity(double celsius, double kilograms) {
    return STEAM.check(
        "density of water",
        "water at " + celsius + " °C",
        "kg/m³",
        kilograms,
        WaterDensity.at(Temperature.ofCelsius(celsius)).map(Density::kilogramsPerCubicMetre),
        0.06);
  }
}
