package dev.kettlemark.checks;

import dev.kettlemark.analysis.CookedStage;
import dev.kettlemark.analysis.Measurement;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.TrialQuantity;
import dev.kettlemark.analysis.TrialReading;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import java.util.List;
import java.util.Optional;

/**
 * Reports a measured weight that mass balance forbids.
 *
 * <p>More than was put in cannot come out. Less than the solids can, since a residue stays in the pan,
 * but then the weight says nothing of the water.
 */
public final class ImpossibleWeight implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("impossible-weight", "more came out of a stage than went in");

  /** Scales and evaporation on the way make the two weighings differ by this share; common practice, no source. */
  private static final double SCALES = 0.01;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return TrialSubject.of(subject).stream()
        .flatMap(trial -> trial
            .readings(TrialQuantity.WEIGHT)
            .filter(reading -> reading.predicted().isKnown())
            .map(TrialReading::measurement)
            .flatMap(measured ->
                trial.stage(measured).flatMap(stage -> check(stage, measured)).stream()))
        .toList();
  }

  private static Optional<Finding> check(StageResult stage, Measurement measured) {
    Mass weight = TrialSubject.weight(measured);
    Optional<Mass> most = CookedStage.putIn(stage).toOptional();
    // What a stage takes of others was boiled there, and is off by as much as the model is.
    Mass slack = stage.stage().takes().isEmpty() ? Mass.ZERO : stage.left().slack();
    Optional<Mass> least = CookedStage.solids(stage).toOptional();
    if (most.filter(mass -> weight.compareTo(mass.times(1 + SCALES).plus(slack)) > 0)
        .isPresent()) {
      return Optional.of(INFO.at(
              measured.figure().span(),
              "`%s` weighs %s, but only %s went in",
              stage.name(),
              Display.mass(weight),
              Display.mass(most.get()))
          .because("no boil adds weight: the pan was weighed with it, or the unit is wrong"));
    }
    if (least.filter(mass -> weight.compareTo(mass.times(1 - SCALES)) < 0).isPresent()) {
      return Optional.of(INFO.at(
              measured.figure().span(),
              "`%s` weighs %s, less than the %s that cannot boil away",
              stage.name(),
              Display.mass(weight),
              Display.mass(least.get()))
          .because("some of it stayed in the pan or was spilled, so the weight says nothing of the"
              + " water")
          .as(Severity.WARNING));
    }
    return Optional.empty();
  }

  /** Whether a weight is told of here, so that no other rule needs to speak of it. */
  static boolean tells(TrialSubject trial, Measurement measured) {
    return trial.stage(measured).flatMap(stage -> check(stage, measured)).isPresent();
  }
}
