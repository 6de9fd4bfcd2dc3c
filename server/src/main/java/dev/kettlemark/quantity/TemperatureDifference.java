package dev.kettlemark.quantity;

/**
 * How far one temperature lies above another, held in kelvin.
 *
 * @param kelvin the difference in K, equal to the difference in °C; finite, of either sign
 */
public record TemperatureDifference(double kelvin) implements Comparable<TemperatureDifference> {

  private static final double FAHRENHEIT_PER_CELSIUS = 1.8;

  public TemperatureDifference {
    kelvin = Finite.number(kelvin, "a temperature difference");
  }

  public static TemperatureDifference ofCelsius(double celsiusDegrees) {
    return new TemperatureDifference(celsiusDegrees);
  }

  public static TemperatureDifference ofFahrenheit(double fahrenheitDegrees) {
    return new TemperatureDifference(fahrenheitDegrees / FAHRENHEIT_PER_CELSIUS);
  }

  /** Returns the difference in Celsius degrees. */
  public double celsius() {
    return kelvin;
  }

  /** Returns the difference in Fahrenheit degrees. */
  public double fahrenheit() {
    return kelvin * FAHRENHEIT_PER_CELSIUS;
  }

  public TemperatureDifference plus(TemperatureDifference other) {
    return new TemperatureDifference(kelvin + other.kelvin);
  }

  public TemperatureDifference times(double factor) {
    return new TemperatureDifference(kelvin * factor);
  }

  @Override
  public int compareTo(TemperatureDifference other) {
    return Double.compare(kelvin, other.kelvin);
  }
}
