package dev.kettlemark.checks;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Display;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports times of a variant that were multiplied by the same factor as its batch.
 *
 * <p>Each step is held against the step of the same verb and rank in the parent's stage.
 */
public final class ScaledTimes implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.hint("scaled-times", "a time was multiplied by the factor of the batch");

  /** Two figures that were rounded after one multiplication differ by no more. */
  private static final double SAME = 0.01;

  /** A batch changed by less is no other batch. */
  private static final double SMALLEST_CHANGE = 0.2;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return Rules.sound(subject)
        .flatMap(variant -> variant
            .parent()
            .flatMap(parent -> subject.ask(Formulas.resolved(parent.value())))
            .map(parent -> check(subject, variant, parent.formula())))
        .orElse(List.of());
  }

  private static List<Finding> check(Subject subject, Variant variant, Formula parent) {
    Optional<BigFraction> own = variant.facts().batch().map(Located::value);
    Optional<BigFraction> old = parent.batch().map(Located::value).filter(b -> b.signum() > 0);
    if (own.isEmpty() || old.isEmpty()) {
      return List.of();
    }
    double factor = own.get().divide(old.get()).doubleValue();
    if (Math.abs(factor - 1) < SMALLEST_CHANGE) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    for (Stage stage : variant.stages()) {
      parent
          .stage(stage.name().value())
          .ifPresent(before -> findings.addAll(check(subject, parent, stage, before, factor)));
    }
    return findings;
  }

  private static List<Finding> check(
      Subject subject, Formula parent, Stage stage, Stage before, double factor) {
    List<Finding> findings = new ArrayList<>();
    for (Statement step : stage.steps()) {
      Optional<Located<Quantity>> now = step.figure(Unit.Dimension.TIME);
      Optional<Located<Quantity>> then = sameRank(stage, step, before)
          .flatMap(old -> old.figure(Unit.Dimension.TIME))
          .filter(time -> time.value().middleInBase().signum() > 0);
      if (now.isPresent() && then.isPresent()) {
        double ratio = now.get()
            .value()
            .middleInBase()
            .divide(then.get().value().middleInBase())
            .doubleValue();
        if (Math.abs(ratio / factor - 1) <= SAME) {
          Finding finding = finding(subject, now.get(), then.get().value(), factor);
          findings.add(subject
              .ask(Lookup.of(Kind.MATERIAL, parent.name().value()))
              .filter(entry -> !parent.inherits(then.get().span()))
              .map(entry ->
                  finding.withRelated(entry.origin(then.get().span()), "the time of the parent"))
              .orElse(finding));
        }
      }
    }
    return findings;
  }

  private static Optional<Statement> sameRank(Stage stage, Statement step, Stage before) {
    String verb = step.word().value();
    int rank = stage.steps().stream().filter(s -> s.is(verb)).toList().indexOf(step);
    return before.steps().stream().filter(s -> s.is(verb)).skip(rank).findFirst();
  }

  private static Finding finding(
      Subject subject, Located<Quantity> now, Quantity then, double factor) {
    String old = written(then);
    return INFO.at(
            now.span(),
            "%s is %s times the %s of the parent, as the batch is",
            Columns.shown(now.span().of(subject.text())),
            Display.trimmed(factor, 2),
            old)
        .because("times do not grow with the batch; go by the state that ends the step, and"
            + " confirm the time at the bench")
        .withFix(Fix.replace("Keep `" + old + "`", now.span(), old));
  }

  private static String written(Quantity time) {
    String low = Display.trimmed(time.low().doubleValue(), 4);
    String figure =
        time.isRange() ? low + "-" + Display.trimmed(time.high().doubleValue(), 4) : low;
    return figure + time.unit().map(unit -> " " + unit.symbol()).orElse("");
  }
}
