package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * Reports a density that is checked before much of the mass goes in.
 *
 * <p>What is folded in later presses air out and weighs more than foam, so the figure says nothing of
 * what is deposited.
 */
public final class EarlyDensityCheck implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "early-density-check", "a density is checked before much of the mass goes in");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> formula.process().stages().stream())
        .flatMap(stage -> check(subject, stage).stream())
        .toList();
  }

  private static Optional<Finding> check(Subject subject, StageResult stage) {
    List<StepResult> steps = stage.steps();
    for (int i = 0; i < steps.size(); i++) {
      StepResult check = steps.get(i);
      Optional<StageParcel> checked = Optional.of(check)
          .filter(step -> step.step().is("check"))
          .filter(step -> BulkDensity.figure(step.step()).isPresent())
          .flatMap(step -> BulkDensity.measured(step.after()));
      if (checked.isPresent()) {
        return after(subject, check, checked.get(), steps.subList(i + 1, steps.size()));
      }
    }
    return Optional.empty();
  }

  private static Optional<Finding> after(
      Subject subject, StepResult check, StageParcel checked, List<StepResult> later) {
    double grams = checked.mass().map(Mass::grams).orElse(0.0);
    double added = 0;
    Optional<Statement> last = Optional.empty();
    for (StepResult step : later) {
      boolean joins = Verb.of(step.step().word().value())
          .filter(verb -> verb.effect() == Verb.Effect.MERGE)
          .isPresent();
      if (joins
          && step.after().stream().anyMatch(mass -> mass.names().containsAll(checked.names()))) {
        added += step.before().stream()
            .filter(mass -> !mass.names().containsAll(checked.names()))
            .mapToDouble(mass -> mass.mass().map(Mass::grams).orElse(0.0))
            .sum();
        last = Optional.of(step.step());
      }
    }
    Ratio share = Ratio.ofFraction(grams > 0 ? added / (grams + added) : 0);
    boolean isMuch = share.compareTo(subject.threshold(Threshold.LATE_ADDITION)) > 0;
    return last.filter(step -> isMuch).map(step -> finding(subject, check.step(), step, share));
  }

  private static Finding finding(Subject subject, Statement check, Statement last, Ratio share) {
    Finding finding = INFO.at(
            check.word().span(),
            "the density is checked before %s of the mass goes in",
            Display.estimate(share))
        .because(
            "what is folded in presses air out and weighs more than foam; check what is deposited")
        .withRelated(subject.entry().origin(last.span()), "the last of it goes in here");
    if (!subject.isWrittenHere(check.span()) || !subject.isWrittenHere(last.span())) {
      return finding;
    }
    WrittenLines lines = WrittenLines.of(subject);
    return finding.withFix(new Fix(
        "Check it behind the last addition",
        List.of(
            lines.without(check.span()),
            lines.below(last.span(), written(subject, check.span())))));
  }

  /** The line as it is written, with its indentation. */
  private static String written(Subject subject, Span span) {
    String text = subject.text();
    int start = text.lastIndexOf('\n', span.start() - 1) + 1;
    return new Span(start, span.end()).of(text);
  }
}
