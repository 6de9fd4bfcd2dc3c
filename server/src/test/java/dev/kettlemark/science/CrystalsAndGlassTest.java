package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures computed apart from this code from the stated equations; figures in print are in {@link CheckTable}. */
class CrystalsAndGlassTest {

  private static final Temperature ROOM = Temperature.ofCelsius(25);
  private static final Temperature TWENTY = Temperature.ofCelsius(20);

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
    Chance.rounds(100, random -> {
      Composition blend = RandomBlends.syrup(random);
      Composition touched = ReferenceBlends.mix(99.99, blend, 0.01, ReferenceBlends.SYRUP_42);
      assertEquals(
          glass(blend).high().celsius(), glass(touched).high().celsius(), 0.2, blend::toString);
    });
  }

  @Test
  void neverMakesAGlassOfFructoseInARoom() {
    assertFalse(GlassTransition.waterFor(ReferenceBlends.FRUCTOSE, ROOM).isKnown());
    assertFalse(GlassTransition.waterFor(ReferenceBlends.AGAVE, ROOM).isKnown());
  }

  @Test
  void ignoresFatAndProtein() {
    Composition plain = ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 4);
    Composition rich = ReferenceBlends.mix(50, plain, 50, Composition.of(Component.FAT));
    assertEquals(glass(plain).low().celsius(), glass(rich).low().celsius(), 1e-9);
    assertFalse(GlassTransition.of(Composition.of(Component.PROTEIN)).isKnown());
  }

  private static Band<Temperature> glass(Composition composition) {
    return GlassTransition.of(composition).toOptional().orElseThrow();
  }

  private static double percent(Outcome<Ratio> outcome) {
    return outcome.map(Ratio::percent).orElse(Double.NaN);
  }
}
