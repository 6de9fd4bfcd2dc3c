package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever an editor hands over, a model answers or says that it cannot; it never throws. */
class ExtremesTest {

  private static final double[] WATER = {
    0, 1e-300, 1e-12, 1e-6, 0.01, 0.3, 0.9, 0.999999, 1 - 1e-15, 1
  };
  private static final double[] CELSIUS = {
    -270, -40, -0.001, 0, 25, 89.999, 90, 99.97, 100, 127, 180, 200, 373, 1000
  };
  private static final double[] PASCALS = {1e-9, 612, 2e3, 7e4, 101_325, 3e5, 2.2e7, 1e12};

  @Test
  void answersOrSaysWhyNot() {
    Chance.rounds(4000, random -> {
      Composition composition = extreme(random);
      Temperature temperature = Temperature.ofCelsius(CELSIUS[random.nextInt(CELSIUS.length)]);
      Pressure pressure = Pressure.ofPascals(PASCALS[random.nextInt(PASCALS.length)]);
      assertDoesNotThrow(
          () -> ask(composition, temperature, pressure), () -> composition + " at " + temperature);
    });
  }

  @Test
  void givesSharesAsShares() {
    Chance.rounds(2000, random -> {
      Composition composition = extreme(random);
      Temperature temperature = Temperature.ofCelsius(CELSIUS[random.nextInt(CELSIUS.length)]);
      Pressure pressure = Pressure.ofPascals(PASCALS[random.nextInt(PASCALS.length)]);
      SyrupBoiling.waterLeft(composition, temperature, pressure)
          .ifKnown(water -> assertTrue(water.isShare(), composition::toString));
      WaterActivity.of(composition, temperature)
          .ifKnown(activity -> assertTrue(activity.isShare(), composition::toString));
    });
  }

  private static void ask(Composition composition, Temperature temperature, Pressure pressure) {
    Portion portion = new Portion(Mass.ofGrams(100), composition);
    Parcel parcel = new Parcel(portion, Band.of(temperature));
    Parcel cool = new Parcel(portion, Band.of(Temperature.ofCelsius(20)));
    List<Outcome<?>> answers = List.of(
        SyrupBoiling.waterLeft(composition, temperature, pressure),
        SyrupBoiling.boilingPoint(composition, pressure),
        SyrupBoiling.cook(portion, temperature, pressure),
        SyrupBoiling.sameSolids(composition, temperature, Pressure.STANDARD_ATMOSPHERE, pressure),
        WaterActivity.of(composition, temperature),
        WaterActivity.waterFor(composition, Ratio.ofFraction(0.5), temperature),
        WaterActivity.common(List.of(portion, portion), temperature),
        ActivityOpinions.norrish(composition),
        ActivityOpinions.ross(composition),
        ActivityOpinions.raoult(composition),
        ActivityOpinions.moneyBorn(composition),
        ActivityOpinions.grover(composition),
        SucroseSolubility.supersaturation(composition, temperature),
        SucroseSolubility.saturatedSolids(composition, temperature),
        GlassTransition.of(composition),
        GlassTransition.waterFor(composition, temperature),
        FoodDensity.of(composition, temperature),
        HeatContent.specificHeat(composition, temperature),
        HeatBalance.of(List.of(parcel, cool), Optional.empty(), Ratio.ofPercent(5), pressure),
        Inversion.of(portion, Ratio.ofPercent(50)),
        DoctorSugars.sucroseShare(composition),
        DextroseEquivalent.of(composition));
    // An unknown answer must say why in words.
    answers.forEach(ExtremesTest::speaks);
  }

  private static <T> void speaks(Outcome<T> answer) {
    String said = answer.fold(known -> "known", Outcome.Unknown::because);
    assertTrue(!said.isBlank());
  }

  private static Composition extreme(Random random) {
    Map<Component, Mass> masses = new EnumMap<>(Component.class);
    Component[] all = Component.values();
    int kinds = 1 + random.nextInt(3);
    for (int i = 0; i < kinds; i++) {
      masses.put(
          all[1 + random.nextInt(all.length - 1)],
          Mass.ofGrams(Math.pow(10, -9 + 12 * random.nextDouble())));
    }
    return Composition.ofMasses(masses)
        .withWaterFraction(Ratio.ofFraction(WATER[random.nextInt(WATER.length)]));
  }
}
