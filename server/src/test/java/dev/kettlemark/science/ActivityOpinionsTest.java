package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Figures computed apart from this code from the equations as printed. */
class ActivityOpinionsTest {

  private static final Composition SIXTY = ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 40);

  @Test
  void multipliesTheSolutesInTurn() {
    Composition both = Composition.ofPercents(
        Map.of(Component.WATER, 60.0, Component.SUCROSE, 20.0, Component.GLUCOSE, 20.0));
    double sucroseAlone = value(ActivityOpinions.norrish(
        Composition.ofPercents(Map.of(Component.WATER, 75.0, Component.SUCROSE, 25.0))));
    double glucoseAlone = value(ActivityOpinions.norrish(
        Composition.ofPercents(Map.of(Component.WATER, 75.0, Component.GLUCOSE, 25.0))));
    assertEquals(sucroseAlone * glucoseAlone, value(ActivityOpinions.ross(both)), 1e-12);
  }

  @Test
  void staysSilentBelowItsLimit() {
    Composition thick = ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 3);
    assertFalse(ActivityOpinions.norrish(thick).isKnown());
    assertFalse(ActivityOpinions.ross(thick).isKnown());
    assertFalse(ActivityOpinions.raoult(SIXTY).isKnown());
    assertFalse(ActivityOpinions.moneyBorn(thick).isKnown());
    assertFalse(ActivityOpinions.grover(thick).isKnown());
    assertFalse(ActivityOpinions.grover(ReferenceBlends.SUCROSE).isKnown());
    assertFalse(ActivityOpinions.norrish(ReferenceBlends.withWater(ReferenceBlends.SYRUP_42, 40))
        .isKnown());
  }

  private static double value(Outcome<Ratio> outcome) {
    return outcome.map(Ratio::fraction).orElse(Double.NaN);
  }
}
