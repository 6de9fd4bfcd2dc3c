package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reference figures computed apart from this code from the stated equations, in the study the models were chosen by;
 * figures in print are in {@link CheckTable}.
 */
class SyrupBoilingTest {

  private static final Pressure SEA_LEVEL = Pressure.STANDARD_ATMOSPHERE;

  private static double waterLeft(Composition blend, double celsius, Pressure pressure) {
    return SyrupBoiling.waterLeft(blend, Temperature.ofCelsius(celsius), pressure)
        .map(Ratio::percent)
        .orElse(Double.NaN);
  }

  private static double boiling(Composition blend, double water, Pressure pressure) {
    return SyrupBoiling.boilingPoint(blend.withWaterFraction(Ratio.ofPercent(water)), pressure)
        .map(Temperature::celsius)
        .orElse(Double.NaN);
  }

  @ParameterizedTest
  @CsvSource({
    "110,22.39,-99",
    "115,16.30,-99",
    "118,13.97,-43.1",
    "121,12.16,-99",
    "127,9.46,-27.6",
    "143,4.90,-8.0",
    "150,3.33,-0.1"
  })
  void keepsAFructoseSyrupSoftHoweverHotItIsCooked(double celsius, double water, double glass) {
    // Agave syrup: 55.6 fructose and 12.4 glucose to 8.4 longer saccharides; −99 stands where no
    // figure was computed.
    Composition agave = Composition.ofMasses(Map.of(
        Component.FRUCTOSE, Mass.ofGrams(55.6),
        Component.GLUCOSE, Mass.ofGrams(12.4),
        Component.MALTOTRIOSE, Mass.ofGrams(8.4)));
    double left = waterLeft(agave, celsius, SEA_LEVEL);
    // The study does not say how long its longer saccharides are.
    assertEquals(water, left, 0.15);
    Band<Temperature> band = GlassTransition.of(agave.withWaterFraction(Ratio.ofPercent(left)))
        .toOptional()
        .orElseThrow();
    assertTrue(band.high().celsius() < 10, "never crunchy in a room");
    if (glass > -99) {
      assertEquals(glass, band.high().celsius(), 5);
    }
  }

  @Test
  void cooksAPortionToItsFinalMass() {
    // 1000 g of sucrose with 300 g of water at 127 °C: 1090 g with 8.26 % water, 210 g evaporated.
    Portion syrup = new Portion(
        Mass.ofGrams(1300),
        Composition.ofMasses(
            Map.of(Component.SUCROSE, Mass.ofGrams(1000), Component.WATER, Mass.ofGrams(300))));
    CookOff cookOff = cook(syrup, 127);
    assertEquals(1090, cookOff.cooked().mass().grams(), 0.5);
    assertEquals(210, cookOff.water().grams(), 0.5);
    assertEquals(8.26, cookOff.cooked().composition().water().percent(), 0.01);
  }

  @Test
  void takesNoWaterFromASyrupThatIsDrierThanTheTemperatureAsks() {
    Portion thick =
        new Portion(Mass.ofGrams(100), ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 5));
    CookOff cookOff = cook(thick, 110);
    assertEquals(0, cookOff.water().grams());
    assertEquals(100, cookOff.cooked().mass().grams(), 1e-9);
  }

  @Test
  void drivesOffEthanolAndNothingElseThanWater() {
    Composition liqueur = Composition.ofPercents(Map.of(
        Component.ETHANOL,
        30.0,
        Component.SUCROSE,
        30.0,
        Component.WATER,
        39.0,
        Component.FAT,
        1.0));
    Portion portion = new Portion(Mass.ofGrams(500), liqueur);
    CookOff cookOff = cook(portion, 118);
    assertEquals(150, cookOff.ethanol().grams(), 1e-9);
    assertEquals(5, cookOff.cooked().massOf(Component.FAT).grams(), 1e-9);
    assertEquals(150, cookOff.cooked().massOf(Component.SUCROSE).grams(), 1e-9);
    Mass all = cookOff.cooked().mass().plus(cookOff.water()).plus(cookOff.ethanol());
    assertEquals(500, all.grams(), 1e-9);
  }

  @Test
  void doesNotKnowWhatLiesOutsideTheModel() {
    assertTrue(
        Double.isNaN(waterLeft(ReferenceBlends.SUCROSE, 95, SEA_LEVEL)),
        "nothing boils below water");
    assertTrue(
        Double.isNaN(waterLeft(ReferenceBlends.SUCROSE, 180, SEA_LEVEL)), "caramel is no syrup");
    assertTrue(Double.isNaN(boiling(ReferenceBlends.SUCROSE, 0.2, SEA_LEVEL)), "nor is dry sugar");
    assertTrue(Double.isNaN(boiling(Composition.of(Component.FAT), 5, SEA_LEVEL)), "nor is fat");
    assertTrue(
        Double.isNaN(boiling(ReferenceBlends.SUCROSE, 2, Pressure.ofKilopascals(5))),
        "vacuum below 90 °C");
  }

  @Test
  void boilsPureWaterAsTheSaturationLineSays() {
    assertEquals(99.9743, boilingOf(Composition.of(Component.WATER)), 1e-4);
  }

  @Test
  void undoesItselfOnRandomBlends() {
    Chance.rounds(500, random -> {
      Composition blend = RandomBlends.syrup(random);
      Temperature cook = Temperature.ofCelsius(104 + 48 * random.nextDouble());
      Ratio left = SyrupBoiling.waterLeft(blend, cook, SEA_LEVEL).toOptional().orElseThrow();
      assertTrue(left.isShare(), () -> blend + " keeps " + left.percent());
      double back = boilingOf(blend.withWaterFraction(left));
      assertEquals(cook.celsius(), back, 1e-6, blend::toString);
    });
  }

  @Test
  void leavesLessWaterTheHotterItGets() {
    Chance.rounds(100, random -> {
      Composition blend = RandomBlends.syrup(random);
      double before = 100;
      for (int celsius = 102; celsius <= 158; celsius++) {
        double left = SyrupBoiling.waterLeft(blend, Temperature.ofCelsius(celsius), SEA_LEVEL)
            .map(Ratio::percent)
            .orElse(Double.NaN);
        assertTrue(left < before, blend + " at " + celsius);
        before = left;
      }
    });
  }

  @Test
  void countsOnlyProportionsNotMass() {
    Chance.rounds(50, random -> {
      Composition blend = RandomBlends.syrup(random).withWaterFraction(Ratio.ofPercent(30));
      CookOff one = cook(new Portion(Mass.ofGrams(100), blend), 125);
      CookOff ten = cook(new Portion(Mass.ofGrams(1000), blend), 125);
      assertEquals(one.water().grams() * 10, ten.water().grams(), 1e-9);
    });
  }

  @Test
  void saysWhyItDoesNotKnow() {
    var unknown =
        SyrupBoiling.waterLeft(ReferenceBlends.SUCROSE, Temperature.ofCelsius(95), SEA_LEVEL);
    assertFalse(unknown.isKnown());
    assertEquals(
        List.of("NO_SOLUTION", "nothing boils at 95.0 °C under 101.3 kPa"),
        unknown.fold(known -> List.of(), why -> List.of(why.reason().name(), why.because())));
  }

  private static double boilingOf(Composition composition) {
    return SyrupBoiling.boilingPoint(composition, SEA_LEVEL)
        .map(Temperature::celsius)
        .orElse(Double.NaN);
  }

  private static CookOff cook(Portion portion, double celsius) {
    return SyrupBoiling.cook(portion, Temperature.ofCelsius(celsius), SEA_LEVEL)
        .toOptional()
        .orElseThrow();
  }
}
