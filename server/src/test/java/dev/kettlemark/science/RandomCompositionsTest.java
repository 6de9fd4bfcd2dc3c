package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What nature asks of every model, whatever the composition: order, continuity, conservation. */
class RandomCompositionsTest {

  private static final Pressure SEA_LEVEL = Pressure.STANDARD_ATMOSPHERE;
  private static final List<Component> COMPONENTS = List.of(Component.values());
  private static final Temperature ROOM = Temperature.ofCelsius(25);

  @Test
  void boilsHotterTheMoreIsDissolved() {
    Chance.rounds(60, random -> {
      Composition blend = RandomBlends.syrup(random);
      Pressure pressure = mountain(random);
      double before = 0;
      for (double solids = 5; solids <= 97; solids += 1) {
        double boiling = boiling(blend, 100 - solids, pressure);
        if (!Double.isNaN(boiling)) {
          assertTrue(boiling > before, blend + " with " + solids + " % solids");
          before = boiling;
        }
      }
      assertTrue(before > 110, () -> blend + " must boil far above water when thick");
    });
  }

  @Test
  void boilsHotterUnderMorePressure() {
    Chance.rounds(60, random -> {
      Composition blend = RandomBlends.syrup(random);
      double water = 4 + 60 * random.nextDouble();
      double before = 0;
      for (double kilopascals = 20; kilopascals <= 105; kilopascals += 1) {
        double boiling = boiling(blend, water, Pressure.ofKilopascals(kilopascals));
        if (!Double.isNaN(boiling)) {
          assertTrue(boiling > before, blend + " at " + kilopascals + " kPa");
          before = boiling;
        }
      }
    });
  }

  @Test
  void softensWithWater() {
    Chance.rounds(200, random -> {
      Composition blend = RandomBlends.syrup(random);
      Band<Double> before = new Band<>(1e3, 1e3);
      for (double water = 0; water <= 95; water += 0.5) {
        Band<Double> glass = GlassTransition.of(ReferenceBlends.withWater(blend, water))
            .toOptional()
            .orElseThrow()
            .map(Temperature::celsius);
        assertTrue(
            glass.low() < before.low() && glass.high() < before.high(), blend + " with " + water);
        assertTrue(glass.low() > -136, "not below the glass of water itself");
        before = glass;
      }
    });
  }

  @Test
  void growsMoreSupersaturatedAsItDries() {
    AtomicInteger known = new AtomicInteger();
    int rounds = Chance.rounds(200, random -> {
      Composition blend = RandomBlends.syrup(random);
      Temperature temperature = Temperature.ofCelsius(140 * random.nextDouble());
      double before = 0;
      for (double water = 90; water >= 2; water -= 0.5) {
        Outcome<Ratio> beyond =
            SucroseSolubility.supersaturation(ReferenceBlends.withWater(blend, water), temperature);
        if (beyond.isKnown()) {
          double now = beyond.map(Ratio::fraction).orElse(Double.NaN);
          assertTrue(now > before, blend + " with " + water + " at " + temperature.celsius());
          before = now;
          known.incrementAndGet();
        }
      }
    });
    assertTrue(known.get() > 50 * rounds, "only " + known + " answers");
  }

  /** Above 96 % the cool equation turns back on itself and the hot one does not; nothing may jump from one to the other. */
  @Test
  void goesThroughNinetyDegreesWithoutAJump() {
    Chance.rounds(300, random -> {
      Composition blend = RandomBlends.syrup(random);
      double water = 0.5 + 30 * random.nextDouble();
      List<Double> boilings = new ArrayList<>();
      for (double kilopascals = 8; kilopascals <= 60; kilopascals += 0.25) {
        boilings.add(boiling(blend, water, Pressure.ofKilopascals(kilopascals)));
      }
      for (int n = 1; n < boilings.size(); n++) {
        double step = boilings.get(n) - boilings.get(n - 1);
        assertTrue(
            Double.isNaN(step) || Math.abs(step) < 2, blend + " with " + water + ": " + step);
      }
    });
  }

  /** What it says boils at a temperature must keep that much water there; an answer at a seam of the model would not. */
  @Test
  void undoesItselfUnderVacuum() {
    AtomicInteger known = new AtomicInteger();
    int rounds = Chance.rounds(20_000, random -> {
      Composition blend = RandomBlends.syrup(random);
      double water = 0.3 + 25 * random.nextDouble();
      Pressure pressure = Pressure.ofKilopascals(3 + 70 * random.nextDouble());
      double boiling = boiling(blend, water, pressure);
      if (!Double.isNaN(boiling)) {
        double left = SyrupBoiling.waterLeft(blend, Temperature.ofCelsius(boiling), pressure)
            .map(Ratio::percent)
            .orElse(Double.NaN);
        assertEquals(water, left, 1e-4, () -> blend + " boils at " + boiling);
        known.incrementAndGet();
      }
    });
    assertTrue(known.get() > 0.4 * rounds, "only " + known + " answers");
  }

  @Test
  void leavesNearlyAsMuchWaterNearlyAsHot() {
    Chance.rounds(200, random -> {
      Composition blend = RandomBlends.syrup(random);
      Pressure pressure = mountain(random);
      double before = Double.NaN;
      for (double celsius = 100; celsius <= 160; celsius += 0.05) {
        double left = SyrupBoiling.waterLeft(blend, Temperature.ofCelsius(celsius), pressure)
            .map(Ratio::percent)
            .orElse(Double.NaN);
        double step = before - left;
        // A thin syrup loses half its water within a degree.
        assertTrue(Double.isNaN(step) || before > 30 || step < 0.6, blend + " at " + celsius);
        before = left;
      }
    });
  }

  /** The straight line that continues the cool equation below 4 % of water joins it. */
  @Test
  void storesThroughNinetySixPercentWithoutAJump() {
    Chance.rounds(200, random -> {
      Composition blend = RandomBlends.syrup(random);
      Temperature temperature = Temperature.ofCelsius(89.9 * random.nextDouble());
      double before = 0;
      for (double water = 0.05; water <= 12; water += 0.05) {
        double activity = activity(blend, water, temperature);
        double step = activity - before;
        assertTrue(step > 0 && step < 0.02, blend + " with " + water + ": " + step);
        before = activity;
      }
    });
  }

  @Test
  void storesAlikeNearlyAsWarm() {
    Chance.rounds(200, random -> {
      Composition blend = RandomBlends.syrup(random);
      double water = 0.5 + 40 * random.nextDouble();
      double before = activity(blend, water, Temperature.ofCelsius(0));
      for (double celsius = 0.5; celsius < 90; celsius += 0.5) {
        double activity = activity(blend, water, Temperature.ofCelsius(celsius));
        assertEquals(before, activity, 0.004, blend + " at " + celsius);
        before = activity;
      }
    });
  }

  @Test
  void cooksWithoutLosingAnythingButWaterAndSpirit() {
    Chance.rounds(1000, random -> {
      Portion before =
          new Portion(Mass.ofGrams(1 + 5000 * random.nextDouble()), RandomBlends.anything(random));
      Temperature cook = Temperature.ofCelsius(101 + 55 * random.nextDouble());
      Optional<CookOff> found =
          SyrupBoiling.cook(before, cook, mountain(random)).toOptional();
      found.ifPresent(off -> {
        double tolerance = before.mass().grams() * 1e-12;
        for (Component component : Component.values()) {
          double gone = switch (component) {
            case WATER -> off.water().grams();
            case ETHANOL -> off.ethanol().grams();
            default -> 0;
          };
          double after = off.cooked().massOf(component).grams() + gone;
          assertEquals(before.massOf(component).grams(), after, tolerance, component.word());
        }
        assertTrue(off.water().grams() >= 0 && off.ethanol().grams() >= 0);
      });
    });
  }

  @Test
  void invertsWithoutLosingAnAtom() {
    Chance.rounds(500, random -> {
      Portion before = new Portion(
          Mass.ofGrams(1 + 900 * random.nextDouble()),
          RandomBlends.anything(random).withWaterFraction(Ratio.ofPercent(30)));
      Portion after = Inversion.of(before, Ratio.ofFraction(random.nextDouble()))
          .toOptional()
          .orElseThrow();
      // Moles of hexose units: two in sucrose, one in glucose and in fructose.
      assertEquals(hexoses(before), hexoses(after), hexoses(before) * 1e-4);
      assertEquals(before.mass().grams(), after.mass().grams(), 1e-9);
      for (Component component : Component.values()) {
        boolean takesPart = switch (component) {
          case SUCROSE, GLUCOSE, FRUCTOSE, WATER -> true;
          default -> false;
        };
        if (!takesPart) {
          assertEquals(before.massOf(component).grams(), after.massOf(component).grams(), 1e-9);
        }
      }
    });
  }

  private static double hexoses(Portion portion) {
    return 2 * portion.massOf(Component.SUCROSE).grams() / 342.297
        + portion.massOf(Component.GLUCOSE).grams() / 180.156
        + portion.massOf(Component.FRUCTOSE).grams() / 180.156;
  }

  /** With a bowl, a loss and thin air: what was in parcels and bowl is in mixture, bowl and steam, or lost. */
  @Test
  void keepsTheHeatOfBowlAndParcels() {
    AtomicInteger boiled = new AtomicInteger();
    int rounds = Chance.rounds(400, random -> {
      Portion syrup = new Portion(
          Mass.ofGrams(200 + 900 * random.nextDouble()),
          ReferenceBlends.withWater(RandomBlends.syrup(random), 2 + 15 * random.nextDouble()));
      Portion base = new Portion(
          Mass.ofGrams(20 + 300 * random.nextDouble()),
          RandomBlends.anything(random).withWaterFraction(Ratio.ofPercent(85)));
      List<HeatBalance.Held> held = List.of(
          new HeatBalance.Held(syrup, 100 + 70 * random.nextDouble()),
          new HeatBalance.Held(base, 5 + 80 * random.nextDouble()));
      Vessel bowl = Vessel.ofSteel(
          Mass.ofGrams(800 * random.nextDouble()),
          Temperature.ofCelsius(5 + 90 * random.nextDouble()));
      Ratio loss = Ratio.ofPercent(10 * random.nextDouble());
      Pressure pressure = mountain(random);
      Portion charge =
          new Portion(syrup.mass().plus(base.mass()), Composition.mix(List.of(syrup, base)));
      for (HeatContent model : HeatContent.values()) {
        HeatBalance.Settled settled = HeatBalance.settle(
                model, charge, held, Optional.of(bowl), loss, pressure)
            .orElseThrow();
        double before = bowl.kilojoulesPerKelvin() * bowl.temperature().celsius()
            + heat(model, held)
            - loss.fraction() * heatAboveColdest(model, held);
        double after = HeatBalance.contents(
                model, HeatBalance.without(charge, settled.steam()), settled.celsius())
            + bowl.kilojoulesPerKelvin() * settled.celsius()
            + settled.steam() * HeatBalance.steamContent(model, settled.celsius());
        assertEquals(before, after, Math.abs(before) * 1e-7, charge::toString);
        boiled.addAndGet(settled.steam() > 0 ? 1 : 0);
      }
    });
    double share = boiled.get() / (2.0 * rounds);
    assertTrue(share > 0.025 && share < 0.975, "both kinds of pour must occur, not " + boiled);
  }

  private static double heat(HeatContent model, List<HeatBalance.Held> held) {
    return held.stream()
        .mapToDouble(one -> HeatBalance.contents(model, one.portion(), one.celsius()))
        .sum();
  }

  private static double heatAboveColdest(HeatContent model, List<HeatBalance.Held> held) {
    double coldest = held.stream().mapToDouble(HeatBalance.Held::celsius).min().orElseThrow();
    return held.stream()
        .mapToDouble(one -> HeatBalance.contents(model, one.portion(), one.celsius())
            - HeatBalance.contents(model, one.portion(), coldest))
        .sum();
  }

  /** A small change of a composition changes every answer a little. */
  @Test
  void aPinchOfAnythingChangesLittle() {
    Chance.rounds(500, random -> {
      Composition blend = ReferenceBlends.withWater(RandomBlends.syrup(random), 12);
      Component pinch = COMPONENTS.get(random.nextInt(COMPONENTS.size()));
      Composition touched = ReferenceBlends.mix(99.99, blend, 0.01, Composition.of(pinch));
      assertEquals(boiling(blend), boiling(touched), 0.1, pinch::word);
      assertEquals(
          WaterActivity.of(blend, ROOM).map(Ratio::fraction).orElse(Double.NaN),
          WaterActivity.of(touched, ROOM).map(Ratio::fraction).orElse(Double.NaN),
          0.002,
          pinch::word);
      assertEquals(glass(blend), glass(touched), 0.3, pinch::word);
      assertEquals(density(blend), density(touched), 0.5, pinch::word);
    });
  }

  @Test
  void givesFiniteFiguresOfAnything() {
    Chance.rounds(5000, random -> {
      Composition any = RandomBlends.anything(random)
          .withWaterFraction(Ratio.ofFraction(Math.pow(random.nextDouble(), 3)));
      double celsius = -40 + 240 * random.nextDouble();
      Temperature temperature = Temperature.ofCelsius(celsius);
      FoodDensity.of(any, temperature)
          .map(Density::kilogramsPerCubicMetre)
          .ifKnown(density -> assertBetween(700, density, 2600));
      HeatContent.specificHeat(any, temperature).ifKnown(band -> {
        assertBetween(0.9, band.low().kilojoulesPerKilogramKelvin(), 4.4);
        assertBetween(0.9, band.high().kilojoulesPerKilogramKelvin(), 4.4);
      });
      GlassTransition.of(any).ifKnown(band -> assertBetween(-136, band.low().celsius(), 190));
      WaterActivity.of(any, temperature)
          .ifKnown(activity -> assertBetween(0, activity.fraction(), 1));
      SyrupBoiling.boilingPoint(any, SEA_LEVEL)
          .ifKnown(boiling -> assertBetween(99.97, boiling.celsius(), 200));
      SucroseSolubility.supersaturation(any, temperature)
          .ifKnown(beyond -> assertBetween(0, beyond.fraction(), 1e6));
      assertBetween(0, Sweetness.of(any).fraction(), 1.2);
      assertBetween(0, FoodEnergy.europeanKilojoules(any), 3700);
      assertBetween(0, FoodEnergy.americanKilocalories(any), 900);
    });
  }

  private static void assertBetween(double low, double value, double high) {
    assertTrue(low <= value && value <= high, () -> value + " not in " + low + " to " + high);
  }

  private static double boiling(Composition syrup) {
    return SyrupBoiling.boilingPoint(syrup, SEA_LEVEL).map(Temperature::celsius).orElse(Double.NaN);
  }

  private static double boiling(Composition dry, double water, Pressure pressure) {
    return SyrupBoiling.boilingPoint(ReferenceBlends.withWater(dry, water), pressure)
        .map(Temperature::celsius)
        .orElse(Double.NaN);
  }

  private static double activity(Composition dry, double water, Temperature temperature) {
    return WaterActivity.of(ReferenceBlends.withWater(dry, water), temperature)
        .map(Ratio::fraction)
        .orElse(Double.NaN);
  }

  private static double glass(Composition composition) {
    return GlassTransition.of(composition).map(band -> band.high().celsius()).orElse(Double.NaN);
  }

  private static double density(Composition composition) {
    return FoodDensity.of(composition, ROOM)
        .map(Density::kilogramsPerCubicMetre)
        .orElse(Double.NaN);
  }

  private static Pressure mountain(Random random) {
    return StandardAtmosphere.pressureAt(Length.ofMetres(3000 * random.nextDouble()))
        .toOptional()
        .orElseThrow();
  }
}
