package dev.kettlemark.checks;

import dev.kettlemark.analysis.Measurement;
import dev.kettlemark.analysis.ProbeReading;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;

/**
 * Reports a thermometer and a scale that contradict each other.
 *
 * <p>Solids do not boil away, so the cooked weight tells the water, and the water where the mass boils.
 */
public final class ThermometerAgainstWeight implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "thermometer-against-weight", "the cooked weight contradicts the thermometer");

  /** Twice the error of the boiling model, {@link ProbeReading#MODEL_ERROR}. */
  private static final Ratio MOST = Ratio.ofPercent(2);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return TrialSubject.of(subject).stream()
        .filter(trial -> !trial.compared().isOlder())
        .flatMap(trial -> trial.compared().probes().stream()
            .filter(ThermometerAgainstWeight::contradicts)
            .filter(
                probe -> moreWater(probe) > 0 || !WeightOffPrediction.tells(trial, probe.weight()))
            .map(probe -> finding(subject, trial, probe)))
        .toList();
  }

  /** Whether it tells of a weight that is more than the thermometer lets expect. */
  static boolean tellsOfExcess(TrialSubject trial, Measurement weight) {
    return !trial.compared().isOlder()
        && trial.compared().probes().stream()
            .filter(probe -> probe.weight().figure().equals(weight.figure()))
            .anyMatch(probe -> contradicts(probe) && moreWater(probe) > 0);
  }

  private static boolean contradicts(ProbeReading probe) {
    return Math.abs(moreWater(probe)) > MOST.percent();
  }

  /** In percent points; 0 where it is not known. */
  private static double moreWater(ProbeReading probe) {
    return probe.moreWater().map(Ratio::percent).orElse(0.0);
  }

  private static Finding finding(Subject subject, TrialSubject trial, ProbeReading probe) {
    String boils = probe
        .boilsAt()
        .map(ThermometerAgainstWeight::shown)
        .map(point -> ", which boils at " + point)
        .orElse("");
    return INFO.at(
            probe.end().figure().span(),
            "the probe read %s, but %s of `%s` hold %s water%s",
            probe.end().shown(),
            probe.weight().shown(),
            probe.end().stage().orElse(""),
            probe.waterByWeight().map(Display::estimate).orElse("unknown"),
            boils)
        .because("one of the two is off: check the probe in melting ice and in boiling water, and"
            + " weigh the empty pan")
        .as(trial.severity())
        .withRelated(subject.entry().origin(probe.weight().figure().span()), "the weight");
  }

  private static String shown(Temperature temperature) {
    return Display.fixed(temperature.celsius(), 0) + " °C";
  }
}
