package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Reports a cooked syrup that waits while other stages are made, in the order in which they are written.
 *
 * <p>Only times that the steps say count, and only a syrup that is left hot. A cook may well begin with
 * another stage than the text, so this is no more than worth knowing.
 */
public final class WaitingSyrup implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("waiting-syrup", "a cooked syrup waits for what it goes into");

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
    List<Stage> stages = formula.formula().stages();
    for (int i = 0; i < stages.size(); i++) {
      if (isLeftHot(subject, formula, i)) {
        int index = i;
        taker(stages, i)
            .ifPresent(taker -> check(subject, formula, index, taker).ifPresent(findings::add));
      }
    }
    return findings;
  }

  /** Whether a stage ends with the cook of a syrup. */
  private static boolean isLeftHot(Subject subject, ComputedFormula formula, int index) {
    List<Verb.Effect> effects =
        DoneStep.of(formula, index).map(DoneStep::effect).toList();
    StageParcel left = formula.process().stages().get(index).left();
    return !effects.isEmpty()
        && effects.get(effects.size() - 1) == Verb.Effect.COOK
        && left.temperature().isWhollyAbove(subject.threshold(Threshold.HOT_SYRUP));
  }

  private static Optional<Integer> taker(List<Stage> stages, int syrup) {
    String name = stages.get(syrup).name().value();
    return IntStream.range(syrup + 1, stages.size())
        .filter(i -> stages.get(i).takes().stream()
            .map(TakeLine::stage)
            .anyMatch(taken -> taken.value().equals(name)))
        .boxed()
        .findFirst();
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, int index, int taker) {
    double seconds = IntStream.range(index + 1, taker)
        .boxed()
        .flatMap(i -> DoneStep.of(formula, i))
        .mapToDouble(step -> step.seconds(Connective.FOR).orElse(0.0))
        .sum();
    return seconds > subject.threshold(Threshold.SYRUP_WAIT).toSeconds()
        ? Optional.of(finding(subject, formula, index, taker, seconds))
        : Optional.empty();
  }

  private static Finding finding(
      Subject subject, ComputedFormula formula, int index, int taker, double seconds) {
    List<Stage> stages = formula.formula().stages();
    Stage syrup = stages.get(index);
    String name = syrup.name().value();
    TakeLine taking = stages.get(taker).takes().stream()
        .filter(take -> take.stage().value().equals(name))
        .findFirst()
        .orElseThrow();
    Finding finding = INFO.at(
            syrup.name().span(),
            "`%s` is cooked, and then waits %s at the least, in the order written",
            name,
            Display.duration(seconds))
        .because("a syrup that is kept hot goes on to colour, and one that is not stiffens; start"
            + " the other stages first, so that all is ready together")
        .withRelated(subject.entry().origin(taking.span()), "taken here");
    return subject
        .writtenFormula()
        .map(written -> finding.withFix(later(subject, written, index, taker)))
        .orElse(finding);
  }

  /** Moves the stages between the syrup and its use up, before the syrup. */
  private static Fix later(Subject subject, Formula formula, int index, int taker) {
    String text = subject.text();
    List<Stage> stages = formula.stages();
    StageBlock syrup = StageBlock.of(text, formula, stages.get(index));
    StageBlock first = StageBlock.of(text, formula, stages.get(index + 1));
    StageBlock last = StageBlock.of(text, formula, stages.get(taker - 1));
    StageBlock between = new StageBlock(first.span().to(last.span()));
    return new Fix(
        "Cook `" + stages.get(index).name().value() + "` last",
        List.of(StageBlock.moveUp(text, between, syrup)));
  }
}
