package dev.kettlemark.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class QuantityTest {

  static Stream<DoubleFunction<Object>> factories() {
    return Stream.of(
        Mass::ofGrams,
        Volume::ofMillilitres,
        Temperature::ofCelsius,
        TemperatureDifference::ofCelsius,
        Ratio::ofPercent,
        Density::ofGramsPerMillilitre,
        Pressure::ofPascals,
        Length::ofMetres,
        Energy::ofJoules,
        SpecificHeat::ofJoulesPerKilogramKelvin,
        SpecificEnergy::ofJoulesPerKilogram);
  }

  @ParameterizedTest
  @MethodSource("factories")
  void refusesWhatIsNoNumber(DoubleFunction<Object> factory) {
    assertThrows(IllegalArgumentException.class, () -> factory.apply(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> factory.apply(Double.POSITIVE_INFINITY));
    assertThrows(IllegalArgumentException.class, () -> factory.apply(Double.NEGATIVE_INFINITY));
  }

  @Test
  void hasNoNegativeZero() {
    assertEquals(Mass.ZERO, Mass.ofGrams(-0.0));
    assertEquals(Ratio.ZERO, Ratio.ofFraction(-0.0));
    assertEquals(Volume.ZERO, Volume.ofLitres(-0.0));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> Temperature.ofKelvin(-1));
    assertThrows(IllegalArgumentException.class, () -> Density.ofGramsPerMillilitre(0));
    assertThrows(IllegalArgumentException.class, () -> Pressure.ofPascals(0));
    assertThrows(IllegalArgumentException.class, () -> Mass.ofGrams(1).dividedBy(Mass.ZERO));
  }

  @Test
  void keepsDimensionsInProducts() {
    Density honey = Density.ofGramsPerMillilitre(1.4);
    assertEquals(140, Volume.ofMillilitres(100).times(honey).grams(), 1e-12);
    assertEquals(100, Mass.ofGrams(140).at(honey).millilitres(), 1e-12);
    assertEquals(1.4, Mass.ofGrams(140).per(Volume.ofMillilitres(100)).gramsPerMillilitre(), 1e-12);
    assertEquals(25, Mass.ofGrams(50).dividedBy(Mass.ofGrams(200)).percent(), 1e-12);
    assertEquals(50, Mass.ofGrams(200).times(Ratio.ofPercent(25)).grams(), 1e-12);
    assertEquals(
        2, SpecificEnergy.ofKilojoulesPerKilogram(4).times(Mass.ofGrams(500)).kilojoules(), 1e-12);
  }

  @Test
  void subtractsTemperaturesToDifferences() {
    Temperature hot = Temperature.ofCelsius(118);
    assertEquals(18, hot.minus(Temperature.ofCelsius(100)).celsius(), 1e-9);
    assertEquals(119, hot.plus(TemperatureDifference.ofCelsius(1)).celsius(), 1e-9);
    assertEquals(1.8, TemperatureDifference.ofCelsius(1).fahrenheit(), 1e-12);
    assertEquals(1, TemperatureDifference.ofFahrenheit(1.8).celsius(), 1e-12);
  }

  @Test
  void comparesWithinATolerance() {
    assertTrue(Mass.ofGrams(100).isWithin(Mass.ofGrams(1), Mass.ofGrams(100.9)));
    assertFalse(Mass.ofGrams(100).isWithin(Mass.ofGrams(1), Mass.ofGrams(101.1)));
    assertTrue(Mass.ofGrams(1).compareTo(Mass.ofKilograms(1)) < 0);
  }
}
