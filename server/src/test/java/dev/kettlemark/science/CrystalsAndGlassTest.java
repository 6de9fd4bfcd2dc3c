package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures computed apart from this code from the stated equations; figures in print are in {@link CheckTable}. */
class CrystalsAndGlassTest {

  private static final Temperature ROOM = Temperature.ofCelsius(25);
  private static final Temperature TWENTY = Temperature.ofCelsius(20);

  @ParameterizedTest
  @CsvSource({"1,1,75.2,0.3", "2,1,71.9,0.3"})
  void dissolvesSucroseBesideInvert(
      double sucrose, double invert, double solids, double tolerance) {
    Composition blend =
        ReferenceBlends.mix(sucrose, ReferenceBlends.SUCROSE, invert, ReferenceBlends.INVERT);
    assertEquals(solids, percent(SucroseSolubility.saturatedSolids(blend, TWENTY)), tolerance);
  }

  @ParameterizedTest
  @CsvSource({"1,1,73.7,0.3", "2,1,71.0,0.3"})
  void dissolvesSucroseBesideGlucoseSyrup(
      double sucrose, double syrup, double solids, double tolerance) {
    Composition blend =
        ReferenceBlends.mix(sucrose, ReferenceBlends.SUCROSE, syrup, ReferenceBlends.SYRUP_42);
    assertEquals(solids, percent(SucroseSolubility.saturatedSolids(blend, TWENTY)), tolerance);
  }

  @Test
  void callsASaturatedSolutionSaturated() {
    Ratio saturated = SucroseSolubility.charles(TWENTY).toOptional().orElseThrow();
    Composition solution = ReferenceBlends.SUCROSE.withWaterFraction(saturated.complement());
    assertEquals(100, percent(SucroseSolubility.supersaturation(solution, TWENTY)), 1e-9);
  }

  @Test
  void namesTheZonesOfSupersaturation() {
    assertEquals(GrainingRisk.STABLE, GrainingRisk.of(Ratio.ofFraction(0.99)));
    assertEquals(GrainingRisk.METASTABLE, GrainingRisk.of(Ratio.ofFraction(1.1)));
    assertEquals(GrainingRisk.INTERMEDIATE, GrainingRisk.of(Ratio.ofFraction(1.25)));
    assertEquals(GrainingRisk.LABILE, GrainingRisk.of(Ratio.ofFraction(4)));
  }

  @Test
  void weighsDoctorSugarsAgainstSucrose() {
    Composition blend =
        ReferenceBlends.mix(60, ReferenceBlends.SUCROSE, 40, ReferenceBlends.SYRUP_42);
    assertEquals(60, percent(DoctorSugars.sucroseShare(blend)), 1e-9);
    assertEquals(40, percent(DoctorSugars.doctorShare(blend)), 1e-9);
    assertTrue(DoctorSugars.Usual.HARD_CANDY.sucroseShare().contains(Ratio.ofPercent(60)));
    assertFalse(DoctorSugars.sucroseShare(Composition.of(Component.FAT)).isKnown());
  }

  @ParameterizedTest
  @CsvSource({
    "SUCROSE,62,53.1,44.8,37.0,29.7,22.9,16.5,4.8,-5.6,-27.3",
    "GLUCOSE,31,23.8,17.0,10.7,4.8,-0.8,-6.0,-15.7,-24.3,-42.5",
    "FRUCTOSE,5,-0.2,-5.1,-9.7,-14.1,-18.3,-22.3,-29.8,-36.6,-51.2",
    "MALTOSE,87,74.3,62.8,52.3,42.6,33.7,25.5,10.9,-1.8,-27.2"
  })
  void softensWithWater(
      Component sugar,
      double at0,
      double at1,
      double at2,
      double at3,
      double at4,
      double at5,
      double at6,
      double at8,
      double at10,
      double at15) {
    double[] water = {0, 1, 2, 3, 4, 5, 6, 8, 10, 15};
    double[] celsius = {at0, at1, at2, at3, at4, at5, at6, at8, at10, at15};
    for (int i = 0; i < water.length; i++) {
      // The tabulated k gives the higher end for all four sugars but glucose, whose rule gives 4.52
      // against 4.5.
      Band<Temperature> band = glass(ReferenceBlends.withWater(Composition.of(sugar), water[i]));
      double nearest = Math.min(
          Math.abs(band.low().celsius() - celsius[i]),
          Math.abs(band.high().celsius() - celsius[i]));
      assertEquals(0, nearest, 0.1, sugar + " with " + water[i] + " % water");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0,79",
    "1,66.9",
    "2,55.9",
    "3,45.9",
    "4,36.6",
    "5,28.1",
    "6,20.3",
    "8,6.2",
    "10,-6.0",
    "15,-30.4"
  })
  void softensGlucoseSyrupWithWater(double water, double celsius) {
    Band<Temperature> band = glass(ReferenceBlends.withWater(ReferenceBlends.SYRUP_42, water));
    assertEquals(celsius, band.high().celsius(), 0.6);
  }

  @ParameterizedTest
  @CsvSource({
    "118,-15.9,-20.0,-19.4,-34.5",
    "127,3.4,-1.0,1.4,-16.9",
    "143,28.0,23.2,28.8,5.8",
    "150,37.9,33.0,40.1,15.1"
  })
  void foretellsTheGlassOfACook(
      double celsius, double sucrose, double glucose, double candy, double invert) {
    assertInBand(sucrose, cooked(ReferenceBlends.SUCROSE, celsius));
    assertInBand(
        glucose,
        cooked(
            ReferenceBlends.mix(85, ReferenceBlends.SUCROSE, 15, ReferenceBlends.GLUCOSE),
            celsius));
    assertInBand(
        candy,
        cooked(
            ReferenceBlends.mix(60, ReferenceBlends.SUCROSE, 40, ReferenceBlends.SYRUP_42),
            celsius));
    assertInBand(
        invert,
        cooked(
            ReferenceBlends.mix(50, ReferenceBlends.SUCROSE, 50, ReferenceBlends.INVERT), celsius));
  }

  @Test
  void findsTheWaterThatSoftensAtRoomTemperature() {
    Band<Ratio> sucrose =
        GlassTransition.waterFor(ReferenceBlends.SUCROSE, ROOM).toOptional().orElseThrow();
    assertEquals(4.1, sucrose.low().percent(), 0.06);
    assertEquals(4.7, sucrose.high().percent(), 0.06);
    Band<Ratio> glucose =
        GlassTransition.waterFor(ReferenceBlends.GLUCOSE, ROOM).toOptional().orElseThrow();
    assertEquals(0.8, glucose.high().percent(), 0.06);
    assertFalse(GlassTransition.waterFor(ReferenceBlends.FRUCTOSE, ROOM).isKnown());
  }

  @ParameterizedTest
  @CsvSource({
    "5,188",
    "10,160",
    "20,141",
    "25,121",
    "36,100",
    "42,79",
    "63,54",
    "100,31",
    "30.5,110.5",
    "39,89.5"
  })
  void interpolatesBetweenGradesOfSyrup(double equivalent, double celsius) {
    assertEquals(
        celsius,
        DextroseEquivalent.glassTransition(equivalent).map(Temperature::celsius).orElse(Double.NaN),
        1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "8,8,11,73,28,4",
    "15,11.5,10,63.5,37,3",
    "19,14,12,55,42,0.5",
    "31,18,12,39,55,4",
    "37,31,12,20,62,2"
  })
  void findsTheGradeAgainFromTheSplit(
      double glucose,
      double maltose,
      double three,
      double higher,
      double equivalent,
      double tolerance) {
    // Typical splits of suppliers' tables, from memory.
    Composition syrup = Composition.ofPercents(Map.of(
        Component.GLUCOSE, glucose,
        Component.MALTOSE, maltose,
        Component.MALTOTRIOSE, three,
        Component.HIGHER_SACCHARIDES, higher));
    assertEquals(equivalent, DextroseEquivalent.of(syrup).orElse(Double.NaN), tolerance);
  }

  @ParameterizedTest
  @CsvSource({
    "20,901,5.45",
    "28,643,3.86",
    "36,500,2.98",
    "42,429,2.54",
    "60,300,1.74",
    "63,286,1.65",
    "100,180,1"
  })
  void knowsTheMeanChainOfAGrade(double equivalent, double mass, double chain) {
    assertEquals(mass, DextroseEquivalent.meanMolarMass(equivalent).orElse(Double.NaN), 1);
    assertEquals(chain, DextroseEquivalent.meanChain(equivalent).orElse(Double.NaN), 0.01);
  }

  @ParameterizedTest
  @CsvSource({
    "40,GLASSY",
    "25,GLASSY",
    "23,BORDERLINE",
    "15.1,BORDERLINE",
    "3.4,CHEWY",
    "-15.9,SOFT"
  })
  void namesTheBite(double glass, Texture texture) {
    assertEquals(texture, Texture.of(Temperature.ofCelsius(glass), ROOM));
  }

  @Test
  void doesNotJumpWhenATraceOfSyrupComesIn() {
    Random random = new Random(5);
    for (int i = 0; i < 100; i++) {
      Composition blend = RandomBlends.syrup(random);
      Composition touched = ReferenceBlends.mix(99.99, blend, 0.01, ReferenceBlends.SYRUP_42);
      assertEquals(
          glass(blend).high().celsius(), glass(touched).high().celsius(), 0.2, blend::toString);
    }
  }

  @Test
  void ignoresFatAndProtein() {
    Composition plain = ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 4);
    Composition rich = ReferenceBlends.mix(50, plain, 50, Composition.of(Component.FAT));
    assertEquals(glass(plain).low().celsius(), glass(rich).low().celsius(), 1e-9);
    assertFalse(GlassTransition.of(Composition.of(Component.PROTEIN)).isKnown());
  }

  private static void assertInBand(double celsius, Band<Temperature> band) {
    assertTrue(
        band.low().celsius() - 0.3 <= celsius && celsius <= band.high().celsius() + 0.3,
        () -> celsius + " not in " + band.low().celsius() + " to " + band.high().celsius());
  }

  private static Band<Temperature> cooked(Composition dry, double celsius) {
    return SyrupBoiling.waterLeft(dry, Temperature.ofCelsius(celsius), Pressure.STANDARD_ATMOSPHERE)
        .map(dry::withWaterFraction)
        .flatMap(GlassTransition::of)
        .toOptional()
        .orElseThrow();
  }

  private static Band<Temperature> glass(Composition composition) {
    return GlassTransition.of(composition).toOptional().orElseThrow();
  }

  private static double percent(Outcome<Ratio> outcome) {
    return outcome.map(Ratio::percent).orElse(Double.NaN);
  }
}
