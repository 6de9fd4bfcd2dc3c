package dev.kettlemark.syntax;

import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.text.Excerpt;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hipparchus.fraction.BigFraction;

/** Reads the figures of the text exactly; a malformed figure has no value. */
public final class Figures {

  /** Longer figures are refused, so that no text can make exact arithmetic slow. */
  private static final int MOST_DIGITS = 24;

  private static final Pattern NUMBER = Pattern.compile("[-−]?[0-9]+(\\.[0-9]+)?");
  private static final Pattern RANGE =
      Pattern.compile("([-−]?[0-9.,]+)[^0-9.,]*?[-–—−][^0-9.,−-]*([-−]?[0-9.,]+)");

  /** In °C; exact by definition: BIPM, SI brochure, 9th edition (2019), section 2.3.1. */
  private static final BigFraction ABSOLUTE_ZERO = new BigFraction(-27315, 100);

  /** In °C; iron is long molten, and every equation of the kitchen has ended. */
  private static final BigFraction HOTTEST = new BigFraction(2000);

  private Figures() {}

  /** Whether a number, range or fraction of the text means something. */
  public static boolean hasValue(String number) {
    return quantity(number, Optional.empty(), Optional.empty()).isPresent();
  }

  static Optional<Quantity> quantity(
      String number, Optional<String> unitWord, Optional<BigFraction> tolerance) {
    Optional<Unit> unit = unitWord.flatMap(Unit::of);
    int slash = number.indexOf('/');
    if (slash > 0) {
      return fraction(number, slash).map(value -> new Quantity(value, value, unit, tolerance, 0));
    }
    Matcher range = RANGE.matcher(number);
    if (range.matches()) {
      Optional<BigFraction> low = number(range.group(1));
      Optional<BigFraction> high = number(range.group(2));
      if (low.isEmpty() || high.isEmpty()) {
        return Optional.empty();
      }
      int decimals = Math.max(decimals(range.group(1)), decimals(range.group(2)));
      boolean rises = low.get().compareTo(high.get()) <= 0;
      return Optional.of(new Quantity(
          rises ? low.get() : high.get(),
          rises ? high.get() : low.get(),
          unit,
          tolerance,
          decimals));
    }
    return number(number)
        .map(value -> new Quantity(value, value, unit, tolerance, decimals(number)));
  }

  /** What is wrong with a figure that has a value; one without has a rule of its own. */
  static Optional<String> complaint(String number, Quantity quantity) {
    if (isNoTemperature(quantity)) {
      String written = number + quantity.unit().map(unit -> " " + unit.symbol()).orElse("");
      return Optional.of(
          Excerpt.of(written) + " is no temperature of a kitchen; check the sign and the scale");
    }
    return runsBackwards(number)
        ? Optional.of(
            "the range " + Excerpt.of(number) + " runs backwards; the lower figure comes first")
        : Optional.empty();
  }

  private static boolean isNoTemperature(Quantity quantity) {
    if (!quantity.measures(Unit.Dimension.TEMPERATURE)) {
      return false;
    }
    BigFraction slack = quantity.toleranceInBase().orElse(BigFraction.ZERO).abs();
    return quantity.lowInBase().subtract(slack).compareTo(ABSOLUTE_ZERO) < 0
        || quantity.highInBase().add(slack).compareTo(HOTTEST) > 0;
  }

  private static boolean runsBackwards(String number) {
    Matcher range = RANGE.matcher(number);
    if (!range.matches()) {
      return false;
    }
    Optional<BigFraction> first = number(range.group(1));
    Optional<BigFraction> second = number(range.group(2));
    return first.isPresent() && second.isPresent() && first.get().compareTo(second.get()) > 0;
  }

  static Optional<BigFraction> number(String text) {
    if (text.length() > MOST_DIGITS || !NUMBER.matcher(text).matches()) {
      return Optional.empty();
    }
    BigDecimal decimal = new BigDecimal(text.replace('−', '-'));
    return Optional.of(
        decimal.scale() <= 0
            ? new BigFraction(decimal.toBigIntegerExact())
            : new BigFraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale())));
  }

  private static Optional<BigFraction> fraction(String text, int slash) {
    if (text.length() > MOST_DIGITS) {
      return Optional.empty();
    }
    BigInteger below = new BigInteger(text.substring(slash + 1));
    return below.signum() == 0
        ? Optional.empty()
        : Optional.of(new BigFraction(new BigInteger(text.substring(0, slash)), below));
  }

  private static int decimals(String text) {
    int point = text.indexOf('.');
    return point < 0 ? 0 : text.length() - point - 1;
  }
}
