package dev.kettlemark.cli;

import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Temperature;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.Stack;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hipparchus.fraction.BigFraction;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/**
 * An amount as it is typed on a command line, with or without a space before the unit or the name.
 *
 * <p>Figures stay exact; the units are those of the language.
 *
 * @param figure the number, in base units: grams, or a fraction of one
 * @param name what the amount is of; empty where the option takes no name
 */
record AmountPhrase(BigFraction figure, String name) {

  private static final String NUMBER = "(\\d{1,9}(?:\\.\\d{1,9})?)";
  private static final Pattern AMOUNT = Pattern.compile(NUMBER + " *([\\p{L}%/-]+)");
  private static final Pattern TEMPERATURE = Pattern.compile(NUMBER + " *(?:°|deg)? *([CF])");
  private static final Pattern COUNT = Pattern.compile("(\\d{1,9})(?: *x)? +((?!x$)\\S+)");
  private static final Pattern AMOUNT_OF = Pattern.compile(NUMBER + " *([\\p{L}%/-]+) +(\\S+)");

  /** A weight, as {@code 2.5kg} or {@code 2.5 kg}, in grams. */
  static BigFraction grams(String typed) {
    return in(Unit.Dimension.MASS, AMOUNT, typed, "a weight, such as 2.5kg").figure();
  }

  /** A share, as {@code 4%}, as a fraction of one. */
  static BigFraction share(String typed) {
    return in(Unit.Dimension.SHARE, AMOUNT, typed, "a share, such as 4%").figure();
  }

  /** A temperature, as {@code 143 °C}, {@code 143C} or {@code 289 °F}. */
  static Temperature temperature(String typed) {
    Matcher match = TEMPERATURE.matcher(typed);
    if (!match.matches()) {
      throw notRead(typed, "a temperature, such as 143 °C");
    }
    double figure = Double.parseDouble(match.group(1));
    return match.group(2).equals("F")
        ? Temperature.ofFahrenheit(figure)
        : Temperature.ofCelsius(figure);
  }

  /** A length, as {@code 1609 m}. */
  static Length length(String typed) {
    return Length.ofMetres(in(Unit.Dimension.LENGTH, AMOUNT, typed, "a height, such as 1609 m")
        .figure()
        .doubleValue());
  }

  /** So many of something that has a name, as {@code 4x half-sphere}. */
  static AmountPhrase counted(String typed) {
    Matcher match = COUNT.matcher(typed);
    if (!match.matches()) {
      throw notRead(typed, "a count and a name, such as 4x dome-24");
    }
    return new AmountPhrase(exact(match.group(1)), match.group(2));
  }

  /** So many grams of something that has a name, as {@code 210 g roasted-hazelnut}. */
  static AmountPhrase weighed(String typed) {
    return in(
        Unit.Dimension.MASS,
        AMOUNT_OF,
        typed,
        "a weight and a name, such as 210 g roasted-hazelnut");
  }

  /** A positive whole number. */
  static BigFraction count(String typed) {
    if (!typed.matches("\\d{1,9}")) {
      throw notRead(typed, "a whole number");
    }
    return exact(typed);
  }

  private static AmountPhrase in(
      Unit.Dimension dimension, Pattern pattern, String typed, String wanted) {
    Matcher match = pattern.matcher(typed);
    if (!match.matches()) {
      throw notRead(typed, wanted);
    }
    Unit unit = Unit.of(match.group(2))
        .filter(u -> u.measures(dimension))
        .orElseThrow(() -> notRead(typed, wanted));
    String name = match.groupCount() > 2 ? match.group(3) : "";
    return new AmountPhrase(exact(match.group(1)).multiply(unit.factor()), name);
  }

  private static BigFraction exact(String number) {
    BigDecimal decimal = new BigDecimal(number);
    return new BigFraction(decimal.unscaledValue())
        .divide(new BigFraction(BigInteger.TEN.pow(decimal.scale())));
  }

  private static UsageMistake notRead(String typed, String wanted) {
    return new UsageMistake("`" + Visible.of(typed) + "` is not " + wanted);
  }

  /** Takes as many words of the command line as make a whole phrase. */
  abstract static class Words implements IParameterConsumer {

    private final Pattern whole;
    private final int most;

    Words(Pattern whole, int most) {
      this.whole = whole;
      this.most = most;
    }

    @Override
    public void consumeParameters(Stack<String> words, ArgSpec option, CommandSpec command) {
      StringBuilder phrase = new StringBuilder(words.isEmpty() ? "" : words.pop());
      int taken = 1;
      while (taken < most
          && !whole.matcher(phrase).matches()
          && !words.isEmpty()
          && !words.peek().startsWith("-")) {
        phrase.append(' ').append(words.pop());
        taken++;
      }
      option.setValue(Optional.of(phrase.toString()));
    }
  }

  /** {@code 2.5 kg} is two words, {@code 2.5kg} one. */
  static final class AmountWords extends Words {
    AmountWords() {
      super(AMOUNT, 2);
    }
  }

  /** {@code 143 °C} is two words. */
  static final class TemperatureWords extends Words {
    TemperatureWords() {
      super(TEMPERATURE, 2);
    }
  }

  /** {@code 4 x half-sphere} is three words. */
  static final class CountWords extends Words {
    CountWords() {
      super(COUNT, 3);
    }
  }

  /** {@code 210 g roasted-hazelnut} is three words. */
  static final class AmountOfWords extends Words {
    AmountOfWords() {
      super(AMOUNT_OF, 3);
    }
  }
}
