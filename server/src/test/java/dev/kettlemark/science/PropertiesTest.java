package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.SpecificHeat;
import dev.kettlemark.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures computed apart from this code from the stated equations; figures in print are in {@link CheckTable}. */
class PropertiesTest {

  @Test
  void conductsHeatAsWaterDoes() {
    // 0.598 W/(m·K) at 20 °C: IAPWS R15-11, from memory.
    assertEquals(0.598, ChoiOkos.WATER.conductivity(20), 0.006);
  }

  @ParameterizedTest
  @CsvSource({
    "20,20,3.674,3.658",
    "60,20,2.649,2.622",
    "80,100,2.405,2.193",
    "90,120,2.258,1.953",
    "97,150,2.229,1.787"
  })
  void givesSpecificHeatOfSyrupAsABand(
      double solids, double celsius, double janovskii, double choiOkos) {
    Band<SpecificHeat> band = HeatContent.specificHeat(
            ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 100 - solids),
            Temperature.ofCelsius(celsius))
        .toOptional()
        .orElseThrow();
    assertEquals(choiOkos, band.low().kilojoulesPerKilogramKelvin(), 2e-3);
    assertEquals(janovskii, band.high().kilojoulesPerKilogramKelvin(), 2e-3);
  }

  @Test
  void sumsSpecificHeatToHeatContent() {
    Chance.rounds(100, random -> {
      Composition blend = RandomBlends.anything(random);
      for (HeatContent model : HeatContent.values()) {
        double slope = (model.kilojoulesPerKilogram(blend, 80.001)
                - model.kilojoulesPerKilogram(blend, 79.999))
            / 0.002;
        assertEquals(model.kilojoulesPerKilogramKelvin(blend, 80), slope, 1e-6);
      }
    });
  }

  @Test
  void swellsWhenWarm() {
    for (int solids = 0; solids <= 95; solids += 5) {
      double before = Double.MAX_VALUE;
      for (int celsius = 10; celsius <= 150; celsius += 10) {
        double density = syrupDensity(solids, celsius);
        assertTrue(density < before, solids + " % at " + celsius);
        before = density;
      }
    }
  }

  @Test
  void weighsMixturesByTheirVolumes() {
    // Fat 917.2 and syrup of 60 % 1286.26 kg/m³ in equal masses.
    Composition half = ReferenceBlends.mix(
        50,
        ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 40),
        50,
        Composition.of(Component.FAT));
    double expected = 2 / (1 / 917.24 + 1 / 1286.26);
    double density = FoodDensity.of(half, Temperature.ofCelsius(20))
        .map(Density::kilogramsPerCubicMetre)
        .orElse(Double.NaN);
    assertEquals(expected, density, 0.1);
    assertFalse(FoodDensity.of(half, Temperature.ofCelsius(200)).isKnown());
    assertFalse(
        FoodDensity.ofSyrup(Ratio.ofPercent(120), Temperature.ofCelsius(20)).isKnown());
  }

  @ParameterizedTest
  @CsvSource({
    "1.36,0.34,300,0.750",
    "1.40,0.90,55.6,0.357",
    "1.035,0.13,696,0.874",
    "1.30,0.45,188.9,0.654"
  })
  void measuresOverrun(double withoutAir, double foam, double overrun, double gas) {
    Density mass = Density.ofGramsPerMillilitre(withoutAir);
    Density whipped = Density.ofGramsPerMillilitre(foam);
    Ratio found = Foam.overrun(mass, whipped).toOptional().orElseThrow();
    assertEquals(overrun, found.percent(), 0.2);
    assertEquals(
        gas, Foam.gasFraction(mass, whipped).map(Ratio::fraction).orElse(Double.NaN), 6e-4);
    assertEquals(foam, Foam.density(mass, found).gramsPerMillilitre(), 1e-12);
    assertFalse(Foam.overrun(whipped, mass).isKnown());
  }

  @Test
  void keepsTheGasThatIsKept() {
    Mass mass = Mass.ofGrams(100);
    Density withoutAir = Density.ofGramsPerMillilitre(1.3);
    Density foam = Density.ofGramsPerMillilitre(0.5);
    Density fat = Density.ofGramsPerMillilitre(0.9);
    Density folded = Foam.afterFolding(mass, foam, withoutAir, Mass.ofGrams(90), fat, Ratio.ONE)
        .toOptional()
        .orElseThrow();
    // 200 mL of foam and 100 mL of fat weigh 190 g.
    assertEquals(190.0 / 300, folded.gramsPerMillilitre(), 1e-12);
    Density flat = Foam.afterFolding(mass, foam, withoutAir, Mass.ofGrams(90), fat, Ratio.ZERO)
        .toOptional()
        .orElseThrow();
    assertEquals(190 / (100 / 1.3 + 100), flat.gramsPerMillilitre(), 1e-12);
  }

  private static double syrupDensity(double solids, double celsius) {
    return FoodDensity.ofSyrup(Ratio.ofPercent(solids), Temperature.ofCelsius(celsius))
        .map(Density::kilogramsPerCubicMetre)
        .orElse(Double.NaN);
  }
}
