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
  private static final Check.Source RULE = Check.Source.read("McGee 2004: 1 °C per 300 m");

  /** Printed with nine digits. */
  private static final double RELATIVE = 1e-8;

  private WaterChecks() {}

  static List<Check> all() {
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
            waterDensity(100, 958.35))
        .toList();
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
