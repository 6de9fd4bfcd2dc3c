package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a foam that is warmed again after it has set.
 *
 * <p>A foam of gelatine or another gel that melts and sets again is left alone: it is melted on purpose.
 */
public final class ReheatedFoam implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("reheated-foam", "a foam is warmed again after it has set");

  private static final String NEVER = WrittenLines.step(
          "never", "reheat \"A set foam loses its air and does not come back.\"")
      .strip();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.effect() == Verb.Effect.HEAT)
        .flatMap(step -> check(subject, step).stream())
        .toList();
  }

  private static Optional<Finding> check(Subject subject, DoneStep step) {
    Band<Temperature> limits = subject.threshold(Threshold.FOAM_REHEAT);
    for (int i = 0; i < step.before().size(); i++) {
      StageParcel set = step.before().get(i);
      Band<Temperature> warm = step.after().get(i).temperature();
      boolean isWarmed = set.temperature().isWhollyBelow(warm.low());
      if (set.isAerated()
          && set.has(State.SET)
          && isWarmed
          && warm.isWhollyAbove(limits.low())
          && isLasting(step, set)) {
        return Optional.of(finding(subject, step, warm, limits.high()));
      }
    }
    return Optional.empty();
  }

  /** Whether something in it has set for good, or foams without any gel that could melt. */
  private static boolean isLasting(DoneStep step, StageParcel set) {
    List<Ingredient> held = WeighedIn.of(step.formula()).in(step.stageIndex(), set).stream()
        .flatMap(one -> one.ingredient().stream())
        .toList();
    return held.stream()
        .anyMatch(ingredient -> ingredient.hasRole("whipping")
            || ingredient.agent().reversible().filter(yes -> !yes).isPresent());
  }

  private static Finding finding(
      Subject subject, DoneStep step, Band<Temperature> warm, Temperature lost) {
    Finding finding = INFO.at(
            step.step().word().span(), "a foam that has set is warmed to %s", Display.celsius(warm))
        .because("its air goes, and it does not come back");
    List<Fix> fixes = Stream.of(step.step().span())
        .filter(subject::isWrittenHere)
        .map(line -> Fix.replace("Write that it must never be reheated", line, NEVER))
        .toList();
    Finding told = OtherPlace.step(finding, subject, step.formula(), "set", "set here");
    return (warm.isWhollyAbove(lost) ? told : told.as(Severity.WARNING)).withFixes(fixes);
  }
}
