package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Expectation;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;

/**
 * Reports an expected overrun that does not belong to the expected density.
 *
 * <p>Overrun is the volume of air on the volume of the mass without it: (1.32 / 0.85 − 1) is 55 %, not
 * 155 %. An overrun that the models do not allow at all is told by {@link ExpectationOff} alone.
 */
public final class OverrunAgainstDensity implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "overrun-against-density",
      "an expected overrun and an expected density contradict each other");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().flatMap(formula -> check(subject, formula)).stream()
        .toList();
  }

  private static Optional<Finding> check(Subject subject, ComputedFormula formula) {
    Facts facts = formula.formula().facts();
    Optional<Located<Quantity>> overrun = facts
        .all("expect")
        .filter(OverrunAgainstDensity::speaksOfOverrun)
        .filter(fact -> Expectation.of(formula, fact).filter(Expectation::isOff).isEmpty())
        .flatMap(fact -> fact.figure(Unit.Dimension.SHARE).stream())
        .findFirst();
    Optional<Located<Quantity>> expected =
        facts.all("expect").flatMap(fact -> BulkDensity.figure(fact).stream()).findFirst();
    Optional<Band<Density>> density = expected.stream()
        .flatMap(figure -> BulkDensity.band(figure.value()).stream())
        .findFirst();
    Optional<Density> withoutAir =
        MassFigures.of(formula).flatMap(MassFigures::densityWithoutAir).toOptional();
    if (overrun.isEmpty() || density.isEmpty() || withoutAir.isEmpty()) {
      return Optional.empty();
    }
    double dense = withoutAir.get().gramsPerMillilitre();
    double least = Math.max(0, dense / density.get().high().gramsPerMillilitre() - 1);
    double most = Math.max(0, dense / density.get().low().gramsPerMillilitre() - 1);
    double slack = subject.threshold(Threshold.OVERRUN_SLACK).fraction();
    double low = overrun.get().value().lowInBase().doubleValue();
    double high = overrun.get().value().highInBase().doubleValue();
    return low > most * (1 + slack) || high < least * (1 - slack)
        ? Optional.of(finding(subject, overrun.get(), withoutAir.get(), density.get(), least, most))
            .map(finding -> expected
                .filter(figure -> subject.isWrittenHere(figure.span()))
                .map(figure ->
                    finding.withRelated(subject.entry().origin(figure.span()), "the density"))
                .orElse(finding))
        : Optional.empty();
  }

  private static boolean speaksOfOverrun(Statement fact) {
    return fact.objectNames().stream().anyMatch(name -> name.value().equals("overrun"));
  }

  private static Finding finding(
      Subject subject,
      Located<Quantity> overrun,
      Density withoutAir,
      Band<Density> density,
      double least,
      double most) {
    String low = Display.trimmed(least * 100, 0);
    String high = Display.trimmed(most * 100, 0);
    String right = (low.equals(high) ? low : low + "-" + high) + " %";
    Finding finding = INFO.at(
            overrun.span(),
            "%s without air and %s with it are an overrun of %s",
            Display.density(Band.of(withoutAir)),
            Display.density(density),
            right)
        .because("overrun counts the air on the mass without it; one of the two figures is wrong");
    return subject.isWrittenHere(overrun.span())
        ? finding.withFix(Fix.replace("Write `" + right + "`", overrun.span(), right))
        : finding;
  }
}
