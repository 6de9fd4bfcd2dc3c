package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Verb;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports what is weighed into a stage and then forgotten by its steps.
 *
 * <p>A step that names nothing acts on all that the stage holds. Two kinds of bare steps bring nothing
 * in: whipping a foam further, and waiting for or shaping a mass that earlier steps have made.
 *
 * <p>A stage without steps is still being written, and nothing is said of it.
 */
public final class UnusedAmount implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("unused-amount", "something is weighed, but no step uses it");

  /** Steps that take up one thing more. */
  private static final Set<String> TAKING_UP = Set.of("fold", "mix", "blend");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> formula.process().stages().stream())
        .filter(stage -> !stage.stage().steps().isEmpty())
        .flatMap(
            stage -> forgotten(subject, stage).map(line -> finding(subject, stage.stage(), line)))
        .toList();
  }

  private static Stream<AmountLine> forgotten(Subject subject, StageResult result) {
    Stage stage = result.stage();
    Set<String> used = new HashSet<>();
    for (StepResult step : result.steps()) {
      Set<String> named = named(subject, stage, step.step());
      if (named.contains(stage.name().value())
          || (named.isEmpty() && bringsAllIn(step, used.isEmpty()))) {
        return Stream.empty();
      }
      used.addAll(named);
    }
    return stage.amounts().stream()
        .filter(line -> !used.contains(line.ingredient().value()));
  }

  /** What a step names of the stage's own: an amount, a mass taken, the stage itself. */
  private static Set<String> named(Subject subject, Stage stage, Statement step) {
    if (effect(step) == Verb.Effect.NONE) {
      return Set.of();
    }
    Set<String> named = new HashSet<>();
    for (Located<String> name : step.names()) {
      named.add(name.value());
      addMembers(subject, name.value(), named);
    }
    named.retainAll(own(stage));
    return named;
  }

  private static Set<String> own(Stage stage) {
    Set<String> own = new HashSet<>();
    stage.amounts().forEach(line -> own.add(line.ingredient().value()));
    stage.takes().forEach(take -> own.add(take.stage().value()));
    own.add(stage.name().value());
    return own;
  }

  /** A basis stands for its members, as in {@code warm liquid to 40 °C}. */
  private static void addMembers(Subject subject, String word, Set<String> named) {
    subject
        .formula()
        .flatMap(formula -> formula.formula().basis(word))
        .ifPresent(basis ->
            basis.members().forEach(member -> named.add(member.ingredient().value())));
  }

  private static boolean bringsAllIn(StepResult step, boolean isFirst) {
    return switch (effect(step.step())) {
      case MERGE, COOK, BOIL, HEAT -> true;
      case AERATE -> step.before().stream().noneMatch(StageParcel::isAerated);
      case WAIT, SHAPE -> isFirst;
      case MEASURE, NONE -> false;
    };
  }

  private static Verb.Effect effect(Statement step) {
    return Verb.of(step.word().value()).map(Verb::effect).orElse(Verb.Effect.NONE);
  }

  private static Finding finding(Subject subject, Stage stage, AmountLine line) {
    String name = line.ingredient().value();
    return INFO.at(
            line.ingredient().span(),
            "`%s` is weighed in `%s`, but no step uses it",
            name,
            stage.name().value())
        .because("the reader finds it left over on the bench")
        .withFixes(lastTakingUp(subject, stage)
            .map(step -> addTo(step, name))
            .or(() -> addStep(subject, stage, name))
            .stream()
            .toList());
  }

  private static Optional<Statement> lastTakingUp(Subject subject, Stage stage) {
    return stage.steps().stream()
        .filter(step -> TAKING_UP.contains(step.word().value()))
        .filter(step -> !step.objectNames().isEmpty() && subject.isWrittenHere(step.span()))
        .reduce((one, later) -> later);
  }

  private static Fix addTo(Statement step, String name) {
    List<Located<String>> objects = step.objectNames();
    return Fix.insert(
        "Add it to the last `" + step.word().value() + "`",
        objects.get(objects.size() - 1).span().end(),
        ", " + name);
  }

  private static Optional<Fix> addStep(Subject subject, Stage stage, String name) {
    return WrittenLines.of(subject)
        .behindAmounts(stage, WrittenLines.step("mix", name))
        .map(edit -> new Fix("Add the step `mix " + name + "`", List.of(edit)));
  }
}
