package dev.kettlemark.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import org.hipparchus.fraction.BigFraction;

/**
 * How figures are shown: the only place where anything is rounded.
 *
 * <p>Weights follow what a kitchen scale shows, percentages what a formula is written in,
 * temperatures what a probe reads. Figures carry a point and no thousands mark.
 */
public final class Display {

  private Display() {}

  /** A weight: 0.025 g, 1.57 g, 60.9 g, 1200 g, 12.00 kg. */
  public static String mass(Mass mass) {
    return mass.grams() >= 10_000 ? fixed(mass.kilograms(), 2) + " kg" : grams(mass.grams()) + " g";
  }

  /** The weight of a whole batch as it was asked for, without trailing zeros: 1200 g, 1618.75 g. */
  public static String batch(Mass mass) {
    return mass.grams() >= 10_000
        ? trimmed(mass.kilograms(), 3) + " kg"
        : trimmed(mass.grams(), 2) + " g";
  }

  /** A weight that a model gives: whole grams from 100 g up. */
  public static String estimate(Mass mass) {
    return mass.grams() >= 100 && mass.grams() < 10_000
        ? fixed(mass.grams(), 0) + " g"
        : mass(mass);
  }

  /** A water activity that a model gives: one figure where both ends look alike. */
  public static String activity(Band<Ratio> band) {
    String low = fixed(band.low().fraction(), 2);
    String high = fixed(band.high().fraction(), 2);
    return between(low, high);
  }

  /** A weight in grams without its unit, three figures or one decimal, whichever is finer. */
  public static String grams(double grams) {
    double size = Math.abs(grams);
    int decimals = size >= 10 ? 1 : size >= 1 ? 2 : 3;
    return fixed(grams, decimals);
  }

  /** A share of a formula: two decimals, three below one tenth of a percent. */
  public static String percent(Ratio ratio) {
    return percentFigure(ratio.percent()) + " %";
  }

  /** A share as {@link #percent} shows it, without its unit. */
  public static String percentFigure(double percent) {
    return fixed(percent, Math.abs(percent) > 0 && Math.abs(percent) < 0.1 ? 3 : 2);
  }

  /** An exact share, as {@link #percent(Ratio)} shows it. */
  public static String percent(BigFraction share) {
    BigFraction percent = share.multiply(100);
    double size = Math.abs(percent.doubleValue());
    return fixed(percent, size > 0 && size < 0.1 ? 3 : 2) + " %";
  }

  /** A range of shares as a recipe states it: 0.3–1.2 %, without zeros behind the last digit. */
  public static String range(Ratio low, Ratio high) {
    return trimmed(low.percent(), 3) + "–" + trimmed(high.percent(), 3) + " %";
  }

  /** A share that a model gives, one decimal. */
  public static String estimate(Ratio ratio) {
    return fixed(ratio.percent(), 1) + " %";
  }

  /** A band of shares that a model gives: one figure where both ends look alike. */
  public static String estimate(Band<Ratio> band) {
    return between(fixed(band.low().percent(), 1), fixed(band.high().percent(), 1)) + " %";
  }

  /** A band of plain numbers: one figure where both ends look alike. */
  public static String number(Band<Ratio> band, int decimals) {
    return between(fixed(band.low().fraction(), decimals), fixed(band.high().fraction(), decimals));
  }

  /** A volume: litres from one litre up. */
  public static String volume(Band<Volume> band) {
    boolean large = band.low().litres() >= 1;
    return large
        ? between(fixed(band.low().litres(), 2), fixed(band.high().litres(), 2)) + " L"
        : between(fixed(band.low().millilitres(), 0), fixed(band.high().millilitres(), 0)) + " mL";
  }

  public static String celsius(Temperature temperature) {
    return trimmed(temperature.celsius(), 1) + " °C";
  }

  public static String fahrenheit(Temperature temperature) {
    return fixed(temperature.fahrenheit(), 0) + " °F";
  }

  /** A temperature band: one figure where both ends look alike. */
  public static String celsius(Band<Temperature> band) {
    String low = fixed(band.low().celsius(), 0);
    String high = fixed(band.high().celsius(), 0);
    return band.isExact() ? celsius(band.low()) : between(low, high) + " °C";
  }

  /** How far a room lies above a glass transition, from the margin of the glass: 12–22 °C above it. */
  public static String aboveGlass(Band<TemperatureDifference> margin) {
    double least = -margin.high().celsius();
    double most = -margin.low().celsius();
    if (most <= 0) {
      return between(fixed(-most, 0), fixed(-least, 0)) + " °C below its glass transition";
    }
    return least >= 0
        ? between(fixed(least, 0), fixed(most, 0)) + " °C above its glass transition"
        : "from " + fixed(-least, 0) + " °C below to " + fixed(most, 0)
            + " °C above its glass transition";
  }

  /** A density: two decimals, one figure where both ends look alike. */
  public static String density(Band<Density> band) {
    return between(
            fixed(band.low().gramsPerMillilitre(), 2), fixed(band.high().gramsPerMillilitre(), 2))
        + " g/mL";
  }

  /** A dash between negative figures would be read as one more sign. */
  private static String between(String low, String high) {
    return low.equals(high) ? low : low + (low.startsWith("-") ? " to " : "–") + high;
  }

  /** A figure with a fixed number of decimals, rounded half up; never minus zero. */
  public static String fixed(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0
        ? BigDecimal.ZERO.setScale(decimals, RoundingMode.UNNECESSARY).toPlainString()
        : rounded.toPlainString();
  }

  /** An exact figure with a fixed number of decimals, rounded half up; never minus zero. */
  public static String fixed(BigFraction value, int decimals) {
    BigDecimal rounded = new BigDecimal(value.getNumerator())
        .divide(new BigDecimal(value.getDenominator()), decimals, RoundingMode.HALF_UP);
    return rounded.toPlainString();
  }

  /** A figure with at most so many decimals, without trailing zeros. */
  public static String trimmed(double value, int decimals) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0
        ? "0"
        : rounded
            .setScale(Math.max(0, rounded.scale()), RoundingMode.UNNECESSARY)
            .toPlainString();
  }

  /** A figure with so many significant digits; below a ten-thousandth as a power of ten. */
  public static String significant(double value, int digits) {
    BigDecimal rounded = BigDecimal.valueOf(value)
        .round(new MathContext(digits, RoundingMode.HALF_UP))
        .stripTrailingZeros();
    if (rounded.signum() == 0) {
      return "0";
    }
    int power = rounded.precision() - rounded.scale() - 1;
    return power < -4
        ? rounded.scaleByPowerOfTen(-power).toPlainString() + "e" + power
        : rounded.toPlainString();
  }

  /** A duration in the largest unit that leaves a whole or short figure. */
  public static String duration(double seconds) {
    if (seconds < 120) {
      return trimmed(seconds, 0) + " s";
    }
    if (seconds < 7200) {
      return trimmed(seconds / 60, 1) + " min";
    }
    if (seconds < 172_800) {
      return trimmed(seconds / 3600, 1) + " h";
    }
    return String.format(Locale.ROOT, "%s days", trimmed(seconds / 86_400, 1));
  }
}
