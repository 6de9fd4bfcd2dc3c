package dev.kettlemark.checks;

import dev.kettlemark.analysis.CookedStage;
import dev.kettlemark.analysis.TrialQuantity;
import dev.kettlemark.analysis.TrialReading;
import dev.kettlemark.library.Entry;
import dev.kettlemark.quantity.Band;
import java.util.List;
import java.util.Optional;

/**
 * Reports a batch that was cooked to another temperature than its step allows.
 *
 * <p>What came of it is no evidence for the formula as written.
 */
public final class CookOutOfTolerance implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "cook-out-of-tolerance", "a batch was cooked outside the tolerance of its step");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return TrialSubject.of(subject).stream()
        .flatMap(trial -> trial
            .readings(TrialQuantity.END)
            .filter(TrialReading::isOutsideWanted)
            .flatMap(
                reading -> reading.wanted().map(band -> finding(trial, reading, band)).stream()))
        .toList();
  }

  private static Finding finding(TrialSubject trial, TrialReading reading, Band<Double> band) {
    Finding finding = INFO.at(
            reading.measurement().figure().span(),
            "`%s` was cooked to %s, and its step allows %s–%s",
            reading.measurement().stage().orElse(""),
            reading.measurement().shown(),
            TrialQuantity.END.figure(band.low()),
            TrialQuantity.END.shown(band.high()))
        .because("what came of it is no evidence for the formula as written")
        .as(trial.severity());
    Optional<Entry> formula = trial.formulaEntry();
    return trial
        .stage(reading.measurement())
        .flatMap(CookedStage::lastCook)
        .flatMap(cook ->
            formula.map(entry -> finding.withRelated(entry.origin(cook.step().span()), "the step")))
        .orElse(finding);
  }
}
