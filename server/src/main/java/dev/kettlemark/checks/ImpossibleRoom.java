package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports a room or a store at a temperature that no such room has.
 *
 * <p>Where the digits make sense in the other scale, that is an error. What lies beyond either way may
 * be a freezer, of which nothing is said, or an oven, of which somebody ought to be sure.
 */
public final class ImpossibleRoom implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("impossible-room", "no room or store has this temperature");

  private static final Set<String> SETTING = Set.of("set", "rest");

  private static final Set<String> FACTS = Set.of("room", "shelf");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Band<Temperature> possible = subject.threshold(Threshold.SETTING_ROOM);
    return Stream.concat(steps(subject), facts(subject))
        .flatMap(statement -> statement.figure(Connective.AT, Unit.Dimension.TEMPERATURE).stream())
        .flatMap(figure -> check(subject, figure, possible).stream())
        .toList();
  }

  private static Stream<Statement> steps(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> formula.formula().steps())
        .filter(step -> SETTING.contains(step.word().value()));
  }

  private static Stream<Statement> facts(Subject subject) {
    return subject.declaration().stream()
        .flatMap(declaration -> {
          if (declaration instanceof House house) {
            return house.facts().statements().stream();
          }
          return declaration instanceof Product product
              ? product.facts().statements().stream()
              : Stream.empty();
        })
        .filter(fact -> FACTS.contains(fact.word().value()));
  }

  private static Optional<Finding> check(
      Subject subject, Located<Quantity> figure, Band<Temperature> possible) {
    Band<Temperature> band = Boiling.band(figure.value());
    if (band.overlaps(possible)) {
      return Optional.empty();
    }
    OtherScale other = OtherScale.of(figure);
    boolean isOtherScale = possible.contains(other.temperature());
    boolean isHot = band.isWhollyAbove(possible.high());
    if (!isOtherScale && !isHot) {
      return Optional.empty();
    }
    Finding finding = INFO.at(figure.span(), "a room at %s", both(figure))
        .because(
            isOtherScale
                ? "in the other scale the digits are those of a usual room"
                : "nothing sets or keeps there; an oven dries, and the word for it is `dry`");
    return Optional.of(
        isOtherScale && subject.isWrittenHere(figure.span())
            ? finding.withFixes(other.fixes(subject.text()))
            : isOtherScale ? finding : finding.as(Severity.WARNING));
  }

  /** The figure in both scales, as written first. */
  private static String both(Located<Quantity> figure) {
    Band<Temperature> band = Boiling.band(figure.value());
    boolean isFahrenheit =
        figure.value().unit().filter(unit -> unit == Unit.FAHRENHEIT).isPresent();
    String fahrenheit = band.isExact()
        ? Display.fahrenheit(band.low())
        : Display.fixed(band.low().fahrenheit(), 0) + "–" + Display.fahrenheit(band.high());
    String celsius = Display.celsius(band);
    return isFahrenheit
        ? fahrenheit + ", which is " + celsius
        : celsius + ", which is " + fahrenheit;
  }
}
