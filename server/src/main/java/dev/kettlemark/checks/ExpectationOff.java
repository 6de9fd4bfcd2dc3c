package dev.kettlemark.checks;

import dev.kettlemark.analysis.Expectation;
import dev.kettlemark.analysis.Figure;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports an {@code expect} line that no figure of the model's band can meet.
 *
 * <p>Either the formula was changed and its expectation forgotten, or something in it is not as written.
 */
public final class ExpectationOff implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("expectation-off", "what is expected cannot come out of this formula");

  /** Units in which a figure of a model is shown as it is. */
  private static final Set<Unit> SHOWN =
      Set.of(Unit.PERCENT, Unit.GRAM_PER_MILLILITRE, Unit.CELSIUS, Unit.WATER_ACTIVITY);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> formula
            .formula()
            .facts()
            .all("expect")
            .filter(fact -> subject.isWrittenHere(fact.span()))
            .flatMap(fact -> Expectation.of(formula, fact).stream()))
        .filter(Expectation::isOff)
        .flatMap(off -> finding(off))
        .toList();
  }

  private static Stream<Finding> finding(Expectation off) {
    return off.predicted().toOptional().stream()
        .map(predicted -> INFO.at(
                off.place().span(),
                "the models give %s for the %s, not %s",
                words(off, predicted),
                off.what().value().replace('-', ' '),
                words(off, off.written()))
            .because(
                "one of the two was changed and the other forgotten, or a line is not as written")
            .withFixes(rewritten(off, predicted).stream().toList()))
        .map(finding -> isNoSuchDensity(off) ? finding.as(Severity.ERROR) : finding);
  }

  /**
   * Whether the mass would be lighter than half of the lightest that its kind is whipped to; a density that
   * a step checks is a figure of the writer's own, and one of the two is right.
   */
  private static boolean isNoSuchDensity(Expectation off) {
    return off.what().value().equals(Figure.DENSITY.word())
        && off.predicted()
            .map(predicted -> !predicted.isExact() && off.written().high() < predicted.low() / 2)
            .orElse(false);
  }

  /** What the models give, with the band as its tolerance; empty for a unit that is not shown here. */
  private static Optional<Fix> rewritten(Expectation off, Band<Double> band) {
    Optional<Unit> unit = off.place().value().unit();
    if (unit.isPresent() && !SHOWN.contains(unit.get())) {
      return Optional.empty();
    }
    double factor = isShare(off) ? 100 : 1;
    int decimals = isShare(off) ? 1 : 2;
    String slack = Display.fixed((band.high() - band.low()) / 2 * factor, decimals);
    String figure = Display.fixed((band.high() + band.low()) / 2 * factor, decimals)
        + unit.map(u -> " " + u.symbol()).orElse("")
        + (Double.parseDouble(slack) > 0 ? " ± " + slack : "");
    return Optional.of(Fix.replace("Write `" + figure + "`", off.place().span(), figure));
  }

  private static boolean isShare(Expectation off) {
    return off.place().value().unit().filter(unit -> unit == Unit.PERCENT).isPresent();
  }

  private static String words(Expectation off, Band<Double> band) {
    double factor = isShare(off) ? 100 : 1;
    String unit = off.place().value().unit().map(u -> " " + u.symbol()).orElse("");
    int decimals = isShare(off) ? 1 : 2;
    String low = Display.fixed(band.low() * factor, decimals);
    String high = Display.fixed(band.high() * factor, decimals);
    return (low.equals(high) ? low : low + " to " + high) + unit;
  }
}
