package dev.kettlemark.checks;

import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Stage;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reports a stage whose mass nobody takes.
 *
 * <p>The last stage is what the formula makes; every other one is made to be taken. A stage that
 * holds nothing yet is still being written.
 */
public final class UnusedStage implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("unused-stage", "a stage is made, but no other takes it");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .map(computed -> computed.formula())
        .flatMap(formula -> butLast(formula.stages())
            .filter(stage -> !stage.amounts().isEmpty() || !stage.takes().isEmpty())
            .filter(stage -> !isTaken(formula, stage) && !waits(formula, stage))
            .map(stage -> finding(subject, formula, stage)))
        .toList();
  }

  private static Stream<Stage> butLast(List<Stage> stages) {
    return stages.stream().limit(Math.max(0, stages.size() - 1));
  }

  private static boolean isTaken(Formula formula, Stage made) {
    return formula.stages().stream()
        .filter(stage -> !stage.equals(made))
        .flatMap(stage -> stage.takes().stream())
        .anyMatch(take -> take.stage().value().equals(made.name().value()));
  }

  /** A stage that takes what is made below it stands in the wrong order, not unused. */
  private static boolean waits(Formula formula, Stage stage) {
    List<Stage> stages = formula.stages();
    return stages.subList(stages.indexOf(stage), stages.size()).stream()
        .anyMatch(below -> stage.takes().stream()
            .anyMatch(take -> take.stage().value().equals(below.name().value())));
  }

  private static Finding finding(Subject subject, Formula formula, Stage stage) {
    String name = stage.name().value();
    List<Stage> later = formula
        .stages()
        .subList(formula.stages().indexOf(stage) + 1, formula.stages().size());
    Span next = later.get(0).name().span();
    Stream<Stage> takers = later.size() == 1
        ? Stream.of(later.get(0))
        : Stream.of(later.get(0), later.get(later.size() - 1));
    return INFO.at(stage.name().span(), "`%s` is made, but no other stage takes it", name)
        .because("its mass is missing from all that follows")
        .withRelated(subject.entry().origin(next), "the next stage")
        .withFixes(takers.flatMap(taker -> take(subject, taker, name)).toList());
  }

  private static Stream<Fix> take(Subject subject, Stage taker, String name) {
    return WrittenLines.of(subject)
        .behindAmounts(taker, WrittenLines.amount("all of", name))
        .map(edit -> new Fix("Take all of it in `" + taker.name().value() + "`", List.of(edit)))
        .stream();
  }
}
