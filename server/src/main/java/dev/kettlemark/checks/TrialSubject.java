package dev.kettlemark.checks;

import dev.kettlemark.analysis.Measurement;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.TrialComparison;
import dev.kettlemark.analysis.TrialQuantity;
import dev.kettlemark.analysis.TrialReading;
import dev.kettlemark.analysis.Trials;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Trial;
import dev.kettlemark.quantity.Mass;
import java.util.Optional;
import java.util.stream.Stream;

/** A trial as rules look at it: what was measured beside what was predicted. */
record TrialSubject(Subject subject, TrialComparison compared) {

  /** Empty for other sections, and for a trial whose formula is not known. */
  static Optional<TrialSubject> of(Subject subject) {
    return trial(subject)
        .flatMap(trial -> subject.ask(Trials.compared(subject.entry())))
        .map(compared -> new TrialSubject(subject, compared));
  }

  /** The trial of a section, whether or not its formula is known. */
  static Optional<Trial> trial(Subject subject) {
    return Trials.trial(subject.entry());
  }

  /** The measurements of a quantity with their predictions; none of a trial of an older version. */
  Stream<TrialReading> readings(TrialQuantity quantity) {
    return compared.isOlder()
        ? Stream.empty()
        : compared.readings().stream()
            .filter(reading -> reading.measurement().quantity() == quantity);
  }

  /** The stage a measurement speaks of; the last one where it names none. */
  Optional<StageResult> stage(Measurement measurement) {
    return measurement.stage().isPresent()
        ? compared.process().stage(measurement.stage().get())
        : compared.process().last();
  }

  /** What a batch that was made otherwise than written shows is no more than worth knowing. */
  Severity severity() {
    return compared.changes().isEmpty() ? Severity.WARNING : Severity.INFORMATION;
  }

  /** The section of the formula that was made. */
  Optional<Entry> formulaEntry() {
    return compared
        .trial()
        .formula()
        .flatMap(name -> subject.ask(Lookup.of(Kind.MATERIAL, name.value())));
  }

  static Mass weight(Measurement measurement) {
    return Mass.ofGrams(measurement.value());
  }
}
