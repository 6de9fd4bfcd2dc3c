package dev.kettlemark.analysis;

import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Trial;
import dev.kettlemark.quantity.Mass;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * A trial beside what its formula predicts for that very batch, in the house where it was made.
 *
 * @param trial what was made
 * @param formula what it was made by, computed for the trial's house
 * @param process the formula followed through with the trial's batch
 * @param current the version that the formula has now
 * @param readings one for each measurement, in the order of the text
 * @param probes thermometers held against the scale, one for each stage of which both were read
 * @param airs densities turned into air
 */
public record TrialComparison(
    Trial trial,
    ComputedFormula formula,
    ProcessResult process,
    Optional<FormulaVersion> current,
    List<TrialReading> readings,
    List<ProbeReading> probes,
    List<AirReading> airs) {

  public TrialComparison {
    readings = List.copyOf(readings);
    probes = List.copyOf(probes);
    airs = List.copyOf(airs);
  }

  static TrialComparison of(Trial trial, ComputedFormula formula) {
    Optional<Double> batch = trial
        .facts()
        .batch()
        .map(written -> written.value().doubleValue())
        .filter(grams -> grams > 0);
    ProcessResult process =
        batch.map(grams -> formula.processWith(Mass.ofGrams(grams))).orElseGet(formula::process);
    boolean hasWeights = batch.isPresent() || !formula.isNominal();
    TrialPredictions predictions = new TrialPredictions(formula, process, hasWeights);
    List<Measurement> measured = trial
        .facts()
        .all("measured")
        .flatMap(line -> Measurement.of(line, formula.formula()).stream())
        .toList();
    return new TrialComparison(
        trial,
        formula,
        process,
        FormulaVersion.of(formula.formula().facts()),
        measured.stream().map(predictions::reading).toList(),
        process.stages().stream()
            .filter(stage -> hasWeights)
            .flatMap(
                stage -> ProbeReading.of(stage, measured, formula.kitchen().pressure()).stream())
            .toList(),
        process.stages().stream()
            .flatMap(stage -> AirReading.of(stage, measured).stream())
            .toList());
  }

  /** Whether the trial says, by its version or its day, that it made an older version. */
  public boolean isOlder() {
    return current.filter(version -> isOlder(trial, version)).isPresent();
  }

  /** Whether a trial made an older version than this one; where nothing tells, it did not. */
  public static boolean isOlder(Trial trial, FormulaVersion version) {
    Optional<BigFraction> made = trial.facts().first("version").flatMap(FormulaVersion::number);
    if (made.isPresent() && version.number().isPresent()) {
      return made.get().compareTo(version.number().get()) < 0;
    }
    return trial
        .day()
        .filter(day -> version.since().filter(day::isBefore).isPresent())
        .isPresent();
  }

  /** What was done otherwise than written. */
  public List<Statement> changes() {
    return trial.facts().all("changed").toList();
  }

  /** Whether the batch is evidence for the formula as it stands today. */
  public boolean isEvidence() {
    return !isOlder() && changes().isEmpty();
  }

  /** The reading of a line of the trial. */
  public Optional<TrialReading> reading(Statement line) {
    return readings.stream()
        .filter(reading -> reading.measurement().line().span().equals(line.span()))
        .findFirst();
  }
}
