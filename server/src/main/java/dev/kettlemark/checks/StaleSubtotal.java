package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** Reports a typed subtotal of a stage that its lines do not add up to any more. */
public final class StaleSubtotal implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "stale-subtotal", "the lines of a stage do not add up to the subtotal typed below them");

  /** Weights are typed in tenths of a gram; common practice, no source. */
  private static final double GRAMS_OF_ROUNDING = 0.1;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().filter(computed -> computed.amounts().complete()).stream()
        .flatMap(computed -> computed.formula().stages().stream()
            .flatMap(stage -> stage.steps().stream()
                .filter(step -> !computed.formula().inherits(step.span()))
                .filter(StaleSubtotal::isSubtotal)
                .flatMap(step -> finding(subject, computed, stage, step).stream())))
        .toList();
  }

  /** {@code check subtotal 58.00 %}, or in grams. */
  static boolean isSubtotal(Statement step) {
    return step.is("check")
        && step.objectNames().stream().anyMatch(name -> name.value().equals("subtotal"));
  }

  private static Optional<Finding> finding(
      Subject subject, ComputedFormula computed, Stage stage, Statement step) {
    BigFraction share = computed.amounts().totalOf(computed.formula().stages().indexOf(stage));
    Optional<Located<Quantity>> percent = step.objectFigure(Unit.Dimension.SHARE)
        .filter(typed -> Math.abs(typed.value().middleInBase().subtract(share).doubleValue())
            > subject.threshold(Threshold.TOTAL_TOLERANCE).fraction());
    if (percent.isPresent()) {
      return Optional.of(finding(subject, stage, percent.get(), Display.percent(share)));
    }
    Optional<BigFraction> grams = computed.amounts().charge().map(share::multiply);
    return grams.flatMap(sum -> step.objectFigure(Unit.Dimension.MASS)
        .filter(typed -> Math.abs(typed.value().middleInBase().subtract(sum).doubleValue())
            > Math.max(
                GRAMS_OF_ROUNDING,
                subject.threshold(Threshold.TOTAL_TOLERANCE).fraction() * sum.doubleValue()))
        .map(
            typed -> finding(subject, stage, typed, Display.trimmed(sum.doubleValue(), 2) + " g")));
  }

  private static Finding finding(
      Subject subject, Stage stage, Located<Quantity> typed, String computed) {
    return INFO.at(
            typed.span(),
            "`%s` adds up to %s, not %s",
            stage.name().value(),
            computed,
            Columns.shown(typed.span().of(subject.text())))
        .because("a line was changed and the subtotal forgotten, or the other way round")
        .withFix(Fix.replace("Write `" + computed + "`", typed.span(), computed));
  }
}
