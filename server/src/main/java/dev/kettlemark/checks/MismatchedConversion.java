package dev.kettlemark.checks;

import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reports a temperature that a note gives in both scales, and not alike.
 *
 * <p>144 °C is 291 °F; whoever cooks to the 290 °F beside it does not cook what was tried.
 */
public final class MismatchedConversion implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "mismatched-conversion", "a temperature is given in both scales, and not alike");

  private static final String NUMBER = "([-−]?\\d{1,4}(?:\\.\\d{1,3})?)";
  private static final String CELSIUS = "\\s?(?:°\\s?C|degC)";
  private static final String FAHRENHEIT = "\\s?(?:°\\s?F|degF)";
  private static final String BETWEEN = "\\s?[(/=,]\\s?";

  private static final Pattern CELSIUS_FIRST =
      Pattern.compile(NUMBER + CELSIUS + BETWEEN + NUMBER + FAHRENHEIT);

  private static final Pattern FAHRENHEIT_FIRST =
      Pattern.compile(NUMBER + FAHRENHEIT + BETWEEN + NUMBER + CELSIUS);

  /** Whole degrees of either scale are never further apart. */
  private static final double ROUNDING = 0.5;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    if (subject.text().indexOf('F') < 0) {
      // Most texts name one scale, and a search for pairs takes long.
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    collect(subject.text(), CELSIUS_FIRST, true, findings);
    collect(subject.text(), FAHRENHEIT_FIRST, false, findings);
    return findings;
  }

  private static void collect(
      String text, Pattern pattern, boolean celsiusFirst, List<Finding> findings) {
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      Optional<Temperature> first = read(matcher.group(1), celsiusFirst);
      Optional<Temperature> second = read(matcher.group(2), !celsiusFirst);
      if (first.isPresent()
          && second.isPresent()
          && Math.abs(first.get().minus(second.get()).celsius()) > ROUNDING + 1e-9) {
        Span figure = new Span(matcher.start(2), matcher.end(2));
        findings.add(finding(first.get(), second.get(), figure, celsiusFirst));
      }
    }
  }

  /** Nothing is colder than absolute zero. */
  private static Optional<Temperature> read(String figure, boolean isCelsius) {
    double degrees = Double.parseDouble(figure.replace('−', '-'));
    double celsius = isCelsius ? degrees : (degrees - 32) / 1.8;
    return celsius > -273 ? Optional.of(Temperature.ofCelsius(celsius)) : Optional.empty();
  }

  private static Finding finding(
      Temperature first, Temperature second, Span figure, boolean celsiusFirst) {
    String right = celsiusFirst
        ? Display.fixed(first.fahrenheit(), 0)
        : Display.trimmed(Math.rint(first.celsius()), 0);
    String unit = celsiusFirst ? " °F" : " °C";
    return INFO.at(
            figure,
            "%s is %s, not %s",
            celsiusFirst ? Display.celsius(first) : Display.fahrenheit(first),
            right + unit,
            celsiusFirst ? Display.fahrenheit(second) : Display.celsius(second))
        .because("readers of one scale cook another mass than was tried")
        .withFix(Fix.replace("Write `" + right + unit + "`", figure, right));
  }
}
