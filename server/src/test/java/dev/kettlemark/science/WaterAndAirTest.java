package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.hummeling.if97.IF97;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.SpecificEnergy;
import dev.kettlemark.quantity.Temperature;
import org.junit.jupiter.api.Test;

/** Holds water and air against an independent implementation of the steam equations and other formulations. */
class WaterAndAirTest {

  private static final IF97 STEAM = new IF97(IF97.UnitSystem.SI);

  @Test
  void boilsAsTheSteamLibrarySays() {
    for (double kelvin = 273.16; kelvin < 647; kelvin += 0.25) {
      double library = STEAM.saturationPressureT(kelvin);
      assertEquals(library, pascals(kelvin), library * 1e-10);
    }
  }

  @Test
  void findsTheBoilingPointAsTheSteamLibrarySays() {
    for (double pascals = 700; pascals < 2e7; pascals *= 1.01) {
      assertEquals(STEAM.saturationTemperatureP(pascals), kelvin(pascals), 1e-8);
    }
  }

  @Test
  void undoesItself() {
    for (double kelvin = 273.15; kelvin < 640; kelvin += 1) {
      // IAPWS states that the backward equation is exact; what is left is rounding.
      assertEquals(kelvin, kelvin(pascals(kelvin)), 1e-7);
    }
  }

  @Test
  void agreesWithTheAuxiliaryEquationForSaturation() {
    // Wagner and Pruss, IAPWS SR1-86(1992), constants from memory; formulations differ by up to
    // 0.02 %.
    for (double celsius = 0.01; celsius <= 180; celsius += 1) {
      double kelvin = celsius + 273.15;
      double auxiliary = wagnerPruss(kelvin);
      assertEquals(auxiliary, pascals(kelvin), auxiliary * 2e-4);
    }
  }

  private static double wagnerPruss(double kelvin) {
    double tau = 1 - kelvin / 647.096;
    double sum = -7.85951783 * tau
        + 1.84408259 * Math.pow(tau, 1.5)
        - 11.7866497 * Math.pow(tau, 3)
        + 22.6807411 * Math.pow(tau, 3.5)
        - 15.9618719 * Math.pow(tau, 4)
        + 1.80122502 * Math.pow(tau, 7.5);
    return 22.064e6 * Math.exp(647.096 / kelvin * sum);
  }

  @Test
  void weighsWaterAsTheSteamLibraryDoes() {
    for (double celsius = 0.5; celsius <= 150; celsius += 0.5) {
      double kelvin = celsius + 273.15;
      double pressure = Math.max(101_325, STEAM.saturationPressureT(kelvin) * 1.000001);
      double library = 1 / STEAM.specificVolumePT(pressure, kelvin);
      double here = WaterDensity.at(Temperature.ofCelsius(celsius))
          .map(Density::kilogramsPerCubicMetre)
          .orElse(Double.NaN);
      assertEquals(library, here, celsius <= 100 ? 0.05 : 0.2, () -> "at " + kelvin);
    }
  }

  @Test
  void boilsOffAsMuchHeatAsTheSteamLibrarySays() {
    for (double celsius = 1; celsius <= 150; celsius += 1) {
      double kelvin = celsius + 273.15;
      double joules = STEAM.specificEnthalpySaturatedVapourT(kelvin)
          - STEAM.specificEnthalpySaturatedLiquidT(kelvin);
      double here = LatentHeat.ofWater(Temperature.ofCelsius(celsius))
          .map(SpecificEnergy::joulesPerKilogram)
          .orElse(Double.NaN);
      assertEquals(joules, here, 2600);
    }
  }

  @Test
  void knowsNothingOutsideItsRanges() {
    assertFalse(SaturationLine.pressureAt(Temperature.ofCelsius(-1)).isKnown());
    assertFalse(SaturationLine.pressureAt(Temperature.ofCelsius(400)).isKnown());
    assertFalse(SaturationLine.boilingPoint(Pressure.ofPascals(100)).isKnown());
    assertFalse(SaturationLine.boilingPoint(Pressure.ofMegapascals(30)).isKnown());
    assertFalse(StandardAtmosphere.pressureAt(Length.ofMetres(12_000)).isKnown());
    assertFalse(WaterDensity.at(Temperature.ofCelsius(160)).isKnown());
    assertFalse(LatentHeat.ofWater(Temperature.ofCelsius(-5)).isKnown());
  }

  private static double pascals(double kelvin) {
    return SaturationLine.pressureAt(Temperature.ofKelvin(kelvin))
        .map(Pressure::pascals)
        .orElse(Double.NaN);
  }

  private static double kelvin(double pascals) {
    return SaturationLine.boilingPoint(Pressure.ofPascals(pascals))
        .map(Temperature::kelvin)
        .orElse(Double.NaN);
  }
}
