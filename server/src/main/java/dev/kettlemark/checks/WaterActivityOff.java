package dev.kettlemark.checks;

import dev.kettlemark.analysis.TrialQuantity;
import dev.kettlemark.analysis.TrialReading;
import java.util.List;

/**
 * Reports a measured water activity far from the predicted one.
 *
 * <p>The measurement wins: shelf life goes by it, not by a model.
 */
public final class WaterActivityOff implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "water-activity-off", "a measured water activity is far from the predicted one");

  /** The model's own error below 0.5, see {@link dev.kettlemark.science.WaterActivity}. */
  private static final double MOST = 0.05;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return TrialSubject.of(subject).stream()
        .flatMap(trial -> trial.readings(TrialQuantity.ACTIVITY))
        .filter(reading -> reading.verdict() != TrialReading.Verdict.AGREES)
        .filter(reading -> Math.abs(reading.difference().orElse(0.0)) > MOST)
        .map(WaterActivityOff::finding)
        .toList();
  }

  private static Finding finding(TrialReading reading) {
    return INFO.at(
            reading.measurement().figure().span(),
            "%s: %s measured, %s predicted",
            reading.measurement().subject(),
            reading.measurement().shown(),
            reading
                .predicted()
                .map(p -> TrialQuantity.ACTIVITY.figure(p.band().low()) + "–"
                    + TrialQuantity.ACTIVITY.figure(p.band().high()))
                .orElse(""))
        .because("the measurement wins; grain, a missed weight or a model at its end explain it");
  }
}
