package dev.kettlemark.checks;

import dev.kettlemark.analysis.Measurement;
import dev.kettlemark.analysis.TrialQuantity;
import dev.kettlemark.analysis.TrialReading;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reports a measured weight far from the one that the batch should have had.
 *
 * <p>Such a batch is no evidence for the formula until it is known where the difference went.
 */
public final class WeightOffPrediction implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("weight-off-prediction", "a measured weight is far from the predicted one");

  /** The boiling model is off by one percent, a scale and a pan by another; common practice, no source. */
  private static final double MOST = 0.03;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return TrialSubject.of(subject).stream()
        .flatMap(trial -> Stream.of(TrialQuantity.WEIGHT, TrialQuantity.FINISHED)
            .flatMap(trial::readings)
            .filter(WeightOffPrediction::isOff)
            .filter(reading -> reading.measurement().quantity() != TrialQuantity.WEIGHT
                || !(ImpossibleWeight.tells(trial, reading.measurement())
                    || ThermometerAgainstWeight.tellsOfExcess(trial, reading.measurement())))
            .map(reading -> finding(reading).as(trial.severity())))
        .toList();
  }

  /** Whether a weight is far from the predicted one; what is short was mostly spilled. */
  static boolean tells(TrialSubject trial, Measurement weight) {
    return trial
        .readings(TrialQuantity.WEIGHT)
        .filter(reading -> reading.measurement().figure().equals(weight.figure()))
        .anyMatch(WeightOffPrediction::isOff);
  }

  private static boolean isOff(TrialReading reading) {
    return reading.verdict() != TrialReading.Verdict.AGREES && Math.abs(share(reading)) > MOST;
  }

  /** The difference as a share of what is predicted; 0 where nothing is. */
  private static double share(TrialReading reading) {
    return reading
        .predicted()
        .map(predicted -> predicted.best() > 0
            ? (reading.measurement().value() - predicted.best()) / predicted.best()
            : 0.0)
        .orElse(0.0);
  }

  private static Finding finding(TrialReading reading) {
    boolean isShort = share(reading) < 0;
    return INFO.at(
            reading.measurement().figure().span(),
            "%s: %s where %s are predicted, %s %s",
            reading.measurement().subject(),
            reading.measurement().shown(),
            reading.predicted().map(p -> TrialQuantity.WEIGHT.shown(p.best())).orElse(""),
            Display.estimate(Ratio.ofFraction(Math.abs(share(reading)))),
            isShort ? "short" : "too much")
        .because(
            isShort
                ? "something was weighed too little, spilled or left in the pan, or cooked too far"
                : "something was weighed too much, or not cooked far enough");
  }
}
