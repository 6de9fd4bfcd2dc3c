package dev.kettlemark.checks;

import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reports a mass that is taken before it is made.
 *
 * <p>A formula is worked from top to bottom; what is written further down does not exist yet.
 */
public final class StageBeforeMade implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("stage-before-made", "a stage takes what is made further down");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(formula -> check(subject, formula.formula())).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, Formula formula) {
    List<Finding> findings = new ArrayList<>();
    for (int taking = 0; taking < formula.stages().size(); taking++) {
      for (TakeLine take : formula.stages().get(taking).takes()) {
        int made =
            formula.stage(take.stage().value()).map(formula.stages()::indexOf).orElse(-1);
        if (made >= taking) {
          findings.add(finding(subject, formula, take, taking, made));
        }
      }
    }
    return findings;
  }

  private static Finding finding(
      Subject subject, Formula formula, TakeLine take, int taking, int made) {
    String name = take.stage().value();
    if (made == taking) {
      return INFO.at(take.stage().span(), "`%s` takes itself", name)
          .because("a stage can only take what an earlier one leaves");
    }
    Stage maker = formula.stages().get(made);
    return INFO.at(
            take.stage().span(),
            "`%s` is taken in `%s`, but made further down",
            name,
            formula.stages().get(taking).name().value())
        .because("the mass is not there yet when it is wanted")
        .withRelated(subject.entry().origin(maker.name().span()), "made here")
        .withFixes(moveUp(subject, formula, taking, made).stream().toList());
  }

  /** Moving helps only where the stage needs nothing of what it would pass. */
  private static Optional<Fix> moveUp(Subject subject, Formula formula, int taking, int made) {
    Stage maker = formula.stages().get(made);
    boolean needsWhatItPasses = formula.stages().subList(taking, made + 1).stream()
        .anyMatch(passed -> maker.takes().stream()
            .anyMatch(take -> take.stage().value().equals(passed.name().value())));
    if (needsWhatItPasses || subject.writtenFormula().isEmpty()) {
      return Optional.empty();
    }
    String text = subject.text();
    StageBlock moved = StageBlock.of(text, formula, maker);
    StageBlock before = StageBlock.of(text, formula, formula.stages().get(taking));
    return Optional.of(new Fix(
        "Move stage `" + maker.name().value() + "` up",
        List.of(StageBlock.moveUp(text, moved, before))));
  }
}
