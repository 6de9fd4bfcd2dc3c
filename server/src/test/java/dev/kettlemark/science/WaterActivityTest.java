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
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Figures computed apart from this code; figures in print are in {@link CheckTable}. */
class WaterActivityTest {

  private static final Temperature ROOM = Temperature.ofCelsius(25);

  @Test
  void fallsThroughoutTheRangeOfTheSucroseEquation() {
    for (int celsius = 0; celsius <= 200; celsius += 5) {
      Temperature temperature = Temperature.ofCelsius(celsius);
      double most = celsius < 90 ? 0.96 : 0.995;
      double before = 2;
      for (double solids = 0; solids <= most; solids += 0.0005) {
        double activity = value(SucroseActivity.of(Ratio.ofFraction(solids), temperature));
        assertTrue(activity < before && activity > 0, celsius + " °C, " + solids);
        before = activity;
      }
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = UsualMoisture.class,
      names = {"HARD_CANDY", "NOUGAT", "JELLY", "MARSHMALLOW"})
  void meetsTheUsualActivityOfUngrainedGoods(UsualMoisture product) {
    // Made of half sucrose, half glucose syrup with no protein or gel, the model must at least
    // cross the usual band.
    Composition blend =
        ReferenceBlends.mix(50, ReferenceBlends.SUCROSE, 50, ReferenceBlends.SYRUP_42);
    Band<Ratio> model =
        product.water().map(water -> Ratio.ofFraction(activity(blend, water.percent())));
    assertTrue(model.overlaps(product.activity()), () -> product + " " + model);
  }

  @Test
  void undoesItselfOnRandomBlends() {
    Chance.rounds(300, random -> {
      Composition blend = RandomBlends.syrup(random);
      double water = 0.5 + 70 * random.nextDouble();
      Ratio activity = Ratio.ofFraction(activity(blend, water));
      double back = value(WaterActivity.waterFor(blend, activity, ROOM)) * 100;
      assertEquals(water, back, 1e-5, blend::toString);
    });
  }

  @Test
  void risesWithWaterAndStaysBelowOne() {
    Chance.rounds(100, random -> {
      Composition blend = RandomBlends.syrup(random);
      double before = 0;
      for (double water = 0.5; water < 99; water += 0.5) {
        double activity = activity(blend, water);
        assertTrue(activity > before && activity < 1, blend + " with " + water);
        before = activity;
      }
    });
  }

  @Test
  void knowsTheEnds() {
    assertEquals(1, value(WaterActivity.of(Composition.of(Component.WATER), ROOM)));
    assertEquals(0, value(WaterActivity.of(ReferenceBlends.SUCROSE, ROOM)), 1e-9);
    assertFalse(WaterActivity.of(Composition.of(Component.FAT), ROOM).isKnown());
    assertFalse(
        WaterActivity.of(ReferenceBlends.SUCROSE, Temperature.ofCelsius(120)).isKnown());
    assertFalse(WaterActivity.waterFor(ReferenceBlends.SUCROSE, Ratio.ONE, ROOM).isKnown());
    assertFalse(SucroseActivity.of(Ratio.ofPercent(98), ROOM).isKnown());
  }

  @ParameterizedTest
  @CsvSource({"5,0.970,0.004", "26.4,0.753,0.02"})
  void lowersWithSalt(double percent, double activity, double tolerance) {
    // Robinson and Stokes 1959 for 5 %, Greenspan 1977 for the saturated brine; both from memory.
    Composition brine =
        Composition.ofPercents(Map.of(Component.WATER, 100 - percent, Component.SALT, percent));
    assertEquals(activity, value(WaterActivity.of(brine, ROOM)), tolerance);
  }

  @Test
  void bringsLayersToOneActivityAndKeepsTheWater() {
    Chance.rounds(50, random -> {
      Portion moist = portion(RandomBlends.syrup(random), 5 + 25 * random.nextDouble());
      Portion dry = portion(RandomBlends.syrup(random), 0.5 + 4 * random.nextDouble());
      Ratio common =
          WaterActivity.common(List.of(moist, dry), ROOM).toOptional().orElseThrow();
      double low = Math.min(value(WaterActivity.of(moist.composition(), ROOM)), ofPortion(dry));
      double high = Math.max(value(WaterActivity.of(moist.composition(), ROOM)), ofPortion(dry));
      assertTrue(low <= common.fraction() && common.fraction() <= high);
      double held = waterAt(moist, common) + waterAt(dry, common);
      double before =
          moist.massOf(Component.WATER).plus(dry.massOf(Component.WATER)).grams();
      assertEquals(before, held, 1e-6);
      assertEquals(common.fraction(), value(WaterActivity.common(List.of(dry, moist), ROOM)), 1e-9);
    });
  }

  private static double waterAt(Portion portion, Ratio activity) {
    Ratio water = WaterActivity.waterFor(portion.composition(), activity, ROOM)
        .toOptional()
        .orElseThrow();
    double solids = portion.mass().times(portion.composition().solids()).grams();
    return solids * water.fraction() / water.complement().fraction();
  }

  private static double ofPortion(Portion portion) {
    return value(WaterActivity.of(portion.composition(), ROOM));
  }

  private static Portion portion(Composition dry, double water) {
    return new Portion(Mass.ofGrams(100), ReferenceBlends.withWater(dry, water));
  }

  private static double activity(Composition dry, double water) {
    return value(WaterActivity.of(ReferenceBlends.withWater(dry, water), ROOM));
  }

  private static double value(Outcome<Ratio> outcome) {
    return outcome.map(Ratio::fraction).orElse(Double.NaN);
  }
}
