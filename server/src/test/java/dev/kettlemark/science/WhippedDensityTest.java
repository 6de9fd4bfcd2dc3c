package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WhippedDensityTest {

  @Test
  void givesTheProductsTheirUsualDensity() {
    // Common practice, no source; nougat by Decker and Ziegler 2003, J. Food Sci.
    check(0.10, 0.17, sugared(12));
    check(0.25, 0.45, sugared(70));
    check(0.35, 0.60, sugared(80));
    check(0.66, 1.12, sugared(92));
  }

  @Test
  void neverJumpsAndNeverGetsLighterWithMoreSolids() {
    double before = 0;
    for (double solids = 2; solids <= 97; solids += 0.1) {
      Band<Density> band = WhippedDensity.of(sugared(solids)).toOptional().orElseThrow();
      double high = band.high().gramsPerMillilitre();
      assertTrue(band.low().compareTo(band.high()) < 0);
      assertTrue(high >= before - 1e-12, "lighter at " + solids);
      assertTrue(solids == 2 || high - before < 0.01, "jumps at " + solids);
      before = high;
    }
  }

  @Test
  void knowsWhatHoldsNoAir() {
    Outcome<Band<Density>> syrup = WhippedDensity.of(
        Composition.ofPercents(Map.of(Component.SUCROSE, 70.0, Component.WATER, 30.0)));
    assertEquals(Reason.NOT_MODELLED, reason(syrup));
    assertEquals(Reason.OUTSIDE_VALID_RANGE, reason(WhippedDensity.of(sugared(98))));
    assertTrue(WhippedDensity.of(Composition.ofPercents(
            Map.of(Component.FAT, 36.0, Component.SUCROSE, 5.0, Component.WATER, 59.0)))
        .isKnown());
  }

  private static void check(double low, double high, Composition composition) {
    Band<Density> band = WhippedDensity.of(composition).toOptional().orElseThrow();
    assertEquals(low, band.low().gramsPerMillilitre(), 1e-9);
    assertEquals(high, band.high().gramsPerMillilitre(), 1e-9);
  }

  private static Composition sugared(double solids) {
    return Composition.ofPercents(Map.of(
        Component.PROTEIN, 1.0, Component.SUCROSE, solids - 1, Component.WATER, 100 - solids));
  }

  private static Reason reason(Outcome<?> outcome) {
    assertFalse(outcome.isKnown());
    return outcome.fold(known -> Reason.CONTRADICTION, Outcome.Unknown::reason);
  }
}
