package dev.kettlemark.quantity;

/**
 * A temperature, held in kelvin.
 *
 * <p>Two temperatures subtract to a {@link TemperatureDifference}; they never add.
 *
 * @param kelvin the absolute temperature in K; finite, not below zero
 */
public record Temperature(double kelvin) implements Comparable<Temperature> {

  /** Exact by definition of the degree Celsius: BIPM, SI brochure, 9th edition (2019), section 2.3.1. */
  private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;

  private static final double FAHRENHEIT_AT_ZERO_CELSIUS = 32;
  private static final double FAHRENHEIT_PER_CELSIUS = 1.8;

  public Temperature {
    kelvin = Finite.number(kelvin, "a temperature");
    if (kelvin < 0) {
      throw new IllegalArgumentException(
          "a temperature must not lie below absolute zero: " + kelvin + " K");
    }
  }

  public static Temperature ofKelvin(double kelvin) {
    return new Temperature(kelvin);
  }

  /** The middle between both ends of a band. */
  public static Temperature middleOf(Band<Temperature> band) {
    return ofKelvin((band.low().kelvin + band.high().kelvin) / 2);
  }

  public static Temperature ofCelsius(double celsius) {
    return new Temperature(celsius + KELVIN_AT_ZERO_CELSIUS);
  }

  public static Temperature ofFahrenheit(double fahrenheit) {
    return ofCelsius((fahrenheit - FAHRENHEIT_AT_ZERO_CELSIUS) / FAHRENHEIT_PER_CELSIUS);
  }

  public double celsius() {
    return kelvin - KELVIN_AT_ZERO_CELSIUS;
  }

  public double fahrenheit() {
    return celsius() * FAHRENHEIT_PER_CELSIUS + FAHRENHEIT_AT_ZERO_CELSIUS;
  }

  public Temperature plus(TemperatureDifference difference) {
    return new Temperature(kelvin + difference.kelvin());
  }

  public Temperature minus(TemperatureDifference difference) {
    return new Temperature(kelvin - difference.kelvin());
  }

  public TemperatureDifference minus(Temperature other) {
    return new TemperatureDifference(kelvin - other.kelvin);
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(kelvin, other.kelvin);
  }
}
