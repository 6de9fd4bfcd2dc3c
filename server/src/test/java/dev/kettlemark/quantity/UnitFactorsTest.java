package dev.kettlemark.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Chance;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Holds unit factors against NIST SP 811 and an independent conversion library. */
class UnitFactorsTest {

  private static final Unit<javax.measure.quantity.Length> INCH =
      Units.METRE.multiply(254).divide(10_000);
  private static final Unit<javax.measure.quantity.Temperature> FAHRENHEIT =
      Units.KELVIN.multiply(5).divide(9).shift(459.67);

  @Test
  void weighsInPoundsAndOunces() {
    // NIST SP 811 (2008), appendix B.8, exact.
    assertEquals(453.59237, Mass.ofPounds(1).grams(), 1e-12);
    assertEquals(28.349523125, Mass.ofOunces(1).grams(), 1e-12);
    assertEquals(1, Mass.ofGrams(28.349523125).ounces(), 1e-12);
    assertEquals(2.5, Mass.ofPounds(2.5).pounds(), 1e-12);
  }

  @Test
  void measuresInCupsAndSpoons() {
    // NIST SP 811 (2008), appendix B.8: the printed digits of the customary units.
    assertEquals(29.57353, Volume.ofFluidOunces(1).millilitres(), 5e-6);
    assertEquals(236.5882, Volume.ofCups(1).millilitres(), 5e-5);
    assertEquals(14.78676, Volume.ofTablespoons(1).millilitres(), 5e-6);
    assertEquals(4.928922, Volume.ofTeaspoons(1).millilitres(), 5e-7);
    assertEquals(16, Volume.ofCups(1).tablespoons(), 1e-12);
    assertEquals(3, Volume.ofTablespoons(1).teaspoons(), 1e-12);
    assertEquals(8, Volume.ofCups(1).fluidOunces(), 1e-12);
    assertEquals(0.5, Volume.ofTablespoons(8).cups(), 1e-12);
  }

  @Test
  void agreesWithTheLibraryOnTheGallon() {
    Unit<javax.measure.quantity.Volume> gallon =
        INCH.pow(3).multiply(231).asType(javax.measure.quantity.Volume.class);
    double litres = in(Quantities.getQuantity(1, gallon), Units.CUBIC_METRE) * 1000;
    assertEquals(litres, Volume.ofCups(16).litres(), 1e-12);
  }

  @Test
  void agreesWithTheLibraryOnFahrenheit() {
    Chance.rounds(200, random -> {
      double fahrenheit = -100 + 600 * random.nextDouble();
      double kelvin = in(Quantities.getQuantity(fahrenheit, FAHRENHEIT), Units.KELVIN);
      assertEquals(kelvin, Temperature.ofFahrenheit(fahrenheit).kelvin(), 1e-9);
      double celsius = in(Quantities.getQuantity(kelvin, Units.KELVIN), Units.CELSIUS);
      assertEquals(celsius, Temperature.ofKelvin(kelvin).celsius(), 1e-9);
    });
  }

  @ParameterizedTest
  @CsvSource({"-40,-40", "0,32", "100,212", "118,244.4", "127,260.6", "150,302"})
  void printsBothScales(double celsius, double fahrenheit) {
    assertEquals(fahrenheit, Temperature.ofCelsius(celsius).fahrenheit(), 1e-9);
    assertEquals(celsius, Temperature.ofFahrenheit(fahrenheit).celsius(), 1e-9);
  }

  @Test
  void measuresInFeetAndInches() {
    // NIST SP 811 (2008), appendix B.8, exact.
    assertEquals(304.8, Length.ofFeet(1).millimetres(), 1e-12);
    assertEquals(12, Length.ofFeet(1).inches(), 1e-12);
    double metres = in(Quantities.getQuantity(12, INCH), Units.METRE);
    assertEquals(metres, Length.ofFeet(1).metres(), 1e-12);
  }

  private static <Q extends Quantity<Q>> double in(Quantity<Q> quantity, Unit<Q> unit) {
    return quantity.to(unit).getValue().doubleValue();
  }
}
