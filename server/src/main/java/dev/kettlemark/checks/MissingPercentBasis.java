package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a cooked formula in percent that does not say of what.
 *
 * <p>One percent of all that is weighed in and one percent of what is left differ by all the water
 * that boiled away.
 */
public final class MissingPercentBasis implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "missing-percent-basis",
      "a cooked formula does not say whether its percentages are of charge");

  private static final BigFraction ONE_PERCENT = new BigFraction(1, 100);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(computed -> computed.formula().percent().isEmpty())
        .filter(MissingPercentBasis::hasBarePercentages)
        .flatMap(computed -> computed
            .formula()
            .steps()
            .filter(MissingPercentBasis::losesWater)
            .findFirst()
            .map(step -> List.of(finding(subject, computed, step))))
        .orElse(List.of());
  }

  private static boolean hasBarePercentages(ComputedFormula computed) {
    return computed.formula().amounts().stream()
        .anyMatch(line -> line.measure().value() instanceof Measure.Share share
            && share.basis().isEmpty());
  }

  private static boolean losesWater(Statement step) {
    return Verb.of(step.word().value())
        .filter(verb -> verb.effect() == Verb.Effect.COOK
            || (verb.effect() == Verb.Effect.BOIL && !step.has(Connective.UNDER, "lid")))
        .isPresent();
  }

  private static Finding finding(Subject subject, ComputedFormula computed, Statement step) {
    Columns columns = new Columns(subject.section());
    Finding finding = INFO.at(
            computed.formula().name().span(),
            "no line says what the percentages are of, and `%s` drives water off",
            step.word().value())
        .because(difference(computed));
    for (String basis : List.of("charge", "finished")) {
      finding = finding.withFix(new Fix(
          "Add `percent of " + basis + "`",
          List.of(columns.addFact(Optional.of("batch"), "percent", "of " + basis))));
    }
    return finding;
  }

  /** One percent of charge, told as a share of what is left. */
  private static String difference(ComputedFormula computed) {
    return computed
        .process()
        .yieldShare()
        .toOptional()
        .filter(share -> share.fraction() > 0)
        .map(share -> Display.percent(ONE_PERCENT) + " of charge is "
            + Display.percent(Ratio.ofPercent(1 / share.fraction()))
            + " of what is left, at a yield of " + Display.estimate(share))
        .orElse("a percentage of charge grows as the water leaves");
  }
}
