package dev.kettlemark.answers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import dev.kettlemark.science.SyrupBoiling;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CookMissedTest {

  private static final TemperatureDifference NONE = TemperatureDifference.ofCelsius(0);

  private static final TemperatureDifference ONE = TemperatureDifference.ofCelsius(1);

  private static CookMissed sucrose(double meant) {
    return new CookMissed(
        Composition.of(Component.SUCROSE),
        Mass.ofGrams(1000),
        Mass.ofGrams(500),
        Kitchen.SEA_LEVEL,
        Temperature.ofCelsius(meant));
  }

  private static CookMissed.Water known(Outcome<CookMissed.Water> water) {
    return water.fold(found -> found, unknown -> {
      throw new AssertionError(unknown.because());
    });
  }

  /**
   * A kilogram of sucrose at one atmosphere holds 1000·(1 − s)/s grams of water at a share s of solids. The shares:
   * 80 % at 109.4 °C and 85 % at 113.0 °C, Claassen's table in Spencer and Meade, Cane Sugar Handbook; 90 % at
   * 123 °C and 95 % at 140 °C, McGee 2004, graph of boiling sugar syrups; all from memory. The tables are good to
   * one degree and two.
   */
  @ParameterizedTest
  @CsvSource({"113.0, 109.4, 85, 80, 15", "140, 123, 95, 90, 12"})
  void drivesOffWhatThePublishedTablesSay(
      double meant, double read, double solidsMeant, double solidsRead, double tolerance) {
    double published = 1000 * (100 / solidsRead - 100 / solidsMeant);
    CookMissed.Water water = known(sucrose(meant).excess(Temperature.ofCelsius(read), NONE));
    assertEquals(published, water.best().grams(), tolerance);
  }

  /** 95 % at 140 °C and 97 % at 151 °C, McGee 2004, from memory: 52.6 g and 30.9 g for a kilogram. */
  @Test
  void putsBackWhatThePublishedTablesSay() {
    CookMissed.Water water = known(sucrose(140).missing(Temperature.ofCelsius(151), NONE));
    assertEquals(52.6 - 30.9, water.best().grams(), 4);
  }

  /** With the water put back the syrup boils where it was meant to. */
  @ParameterizedTest
  @CsvSource({"117, 121", "126, 131", "140, 145"})
  void waterPutBackBoilsAtTheTarget(double meant, double read) {
    CookMissed cook = sucrose(meant);
    Ratio held = SyrupBoiling.waterLeft(
            Composition.of(Component.SUCROSE), Temperature.ofCelsius(read), Kitchen.SEA_LEVEL)
        .orElse(Ratio.ZERO);
    double before = 1000 * held.fraction() / held.complement().fraction();
    double water =
        before + known(cook.missing(Temperature.ofCelsius(read), NONE)).best().grams();
    Composition mended = Composition.of(Component.SUCROSE)
        .withWaterFraction(Ratio.ofFraction(water / (1000 + water)));
    double boils = SyrupBoiling.boilingPoint(mended, Kitchen.SEA_LEVEL)
        .map(Temperature::celsius)
        .orElse(Double.NaN);
    assertEquals(meant, boils, 0.01);
  }

  /** What a thermometer may be off by stands around the best figure, and nothing is below nothing. */
  @Test
  void tellsWhatTheThermometerMayBeOffBy() {
    CookMissed.Water near = known(sucrose(126).missing(Temperature.ofCelsius(126.5), ONE));
    assertEquals(0, near.low().grams(), 1e-9);
    CookMissed.Water far = known(sucrose(126).missing(Temperature.ofCelsius(130), ONE));
    assertTrue(far.low().grams() < far.best().grams());
    assertTrue(far.best().grams() < far.high().grams());
    CookMissed.Water under = known(sucrose(126).excess(Temperature.ofCelsius(122), ONE));
    assertTrue(under.low().grams() < under.best().grams());
    assertTrue(under.best().grams() < under.high().grams());
  }

  /** No syrup gives off more water than lay in the pan. */
  @Test
  void neverHoldsMoreThanLayInThePan() {
    CookMissed dry = new CookMissed(
        Composition.of(Component.SUCROSE),
        Mass.ofGrams(1000),
        Mass.ofGrams(80),
        Kitchen.SEA_LEVEL,
        Temperature.ofCelsius(140));
    double most = known(dry.excess(Temperature.ofCelsius(112), NONE)).best().grams();
    double atTarget =
        known(sucrose(140).excess(Temperature.ofCelsius(112), NONE)).best().grams();
    assertTrue(most < 80 && most < atTarget, most + " of " + atTarget);
  }

  /** Where the boiling model ends there is no figure, and a reason. */
  @Test
  void saysWhyThereIsNoFigure() {
    assertFalse(sucrose(140).missing(Temperature.ofCelsius(185), NONE).isKnown());
  }

  @Test
  void readsAStepOfAFormula() {
    ComputedFormula formula = Workbench.of("""
        formula candy
          percent of charge
          batch 1000 g
        stage syrup
          70.00 % white-sugar
          q.s.    water
          cook    to 130 °C
        """).formula("candy");
    CookMissed cook = CookMissed.of(
            formula.process().stages().get(0).steps().get(0), formula.kitchen())
        .fold(found -> found, unknown -> {
          throw new AssertionError(unknown.because());
        });
    assertEquals(700, cook.solids().grams(), 1);
    assertEquals(300, cook.water().grams(), 1);
    assertEquals(130, cook.meant().celsius(), 1e-9);
  }
}
