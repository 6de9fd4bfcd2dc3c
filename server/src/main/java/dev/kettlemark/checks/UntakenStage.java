package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.TakeLine;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a step that speaks of an earlier stage which its own stage did not take.
 *
 * <p>A stage that lies in a mass which is taken is there as well, and may still be called by its name.
 */
public final class UntakenStage implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("untaken-stage", "a step uses a stage of which nothing was taken");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(formula -> check(subject, formula)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula formula) {
    List<Finding> findings = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (DoneStep step : DoneStep.all(formula)) {
      List<Stage> earlier = formula.formula().stages().subList(0, step.stageIndex());
      for (Located<String> name : spokenOf(step.step())) {
        if (earlier.stream().anyMatch(s -> s.name().value().equals(name.value()))
            && !there(earlier, step.stage().stage()).contains(name.value())
            && told.add(step.stageIndex() + " " + name.value())) {
          findings.add(finding(subject, formula, step.stage().stage(), name));
        }
      }
    }
    return findings;
  }

  private static List<Located<String>> spokenOf(Statement step) {
    if (step.is("check") || step.is("never") || step.is("keep")) {
      return List.of();
    }
    List<Located<String>> names = new ArrayList<>(step.objectNames());
    names.addAll(step.names(Connective.INTO));
    names.addAll(step.names(Connective.WITH));
    return names;
  }

  /** Everything that a stage holds by name: amounts, itself, its tool, and stages however far back. */
  private static Set<String> there(List<Stage> earlier, Stage stage) {
    Set<String> there = new HashSet<>();
    stage.amounts().stream().map(AmountLine::ingredient).forEach(name -> there.add(name.value()));
    stage.vessel().ifPresent(vessel -> there.add(vessel.value()));
    there.add(stage.name().value());
    Set<String> taken = new HashSet<>(taken(stage));
    for (int i = earlier.size() - 1; i >= 0; i--) {
      if (taken.contains(earlier.get(i).name().value())) {
        taken.addAll(taken(earlier.get(i)));
      }
    }
    there.addAll(taken);
    return there;
  }

  private static List<String> taken(Stage stage) {
    return stage.takes().stream().map(take -> take.stage().value()).toList();
  }

  private static Finding finding(
      Subject subject, ComputedFormula formula, Stage stage, Located<String> name) {
    return INFO.at(
            name.span(),
            "`%s` is used in `%s`, which takes nothing of it",
            name.value(),
            stage.name().value())
        .because("without a line such as `all of " + name.value()
            + "` its mass is missing from the balance")
        .withRelated(
            subject
                .entry()
                .origin(formula
                    .formula()
                    .stage(name.value())
                    .map(made -> made.name().span())
                    .orElse(name.span())),
            "made here")
        .withFixes(take(subject, formula, stage, name.value()).stream().toList());
  }

  /** Takes what is left of it, if all is. */
  private static Optional<Fix> take(
      Subject subject, ComputedFormula formula, Stage stage, String name) {
    boolean isWhole = formula.formula().stages().stream()
        .flatMap(other -> other.takes().stream())
        .filter(take -> take.stage().value().equals(name))
        .map(TakeLine::share)
        .allMatch(share -> share.equals(BigFraction.ZERO));
    return Optional.of(stage)
        .filter(here -> isWhole && subject.isWrittenHere(here.span()))
        .flatMap(here ->
            WrittenLines.of(subject).behindAmounts(here, WrittenLines.amount("all of", name)))
        .map(edit -> new Fix("Take `all of " + name + "`", List.of(edit)));
  }
}
