package dev.kettlemark.sheets;

import dev.kettlemark.analysis.KeptBatch;
import dev.kettlemark.analysis.TrialComparison;
import dev.kettlemark.analysis.TrialQuantity;
import dev.kettlemark.analysis.TrialReading;
import dev.kettlemark.analysis.Trials;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the library knows of how long a thing was really kept, beside what is said of its shelf life. */
final class StorageProof {

  private final Shown shown;
  private final Optional<Statement> shelf;
  private final List<KeptBatch> kept;

  private StorageProof(Shown shown, Optional<Statement> shelf) {
    this.shown = shown;
    this.shelf = shelf;
    this.kept =
        shown.made().stream().flatMap(made -> kept(shown, made).stream()).toList();
  }

  /**
   * What is told of it, one sentence each.
   *
   * @param shelf the shelf life as it is written
   */
  static List<Phrase> of(Shown shown, Optional<Statement> shelf) {
    return new StorageProof(shown, shelf).told();
  }

  private static List<KeptBatch> kept(Shown shown, Made made) {
    return shown.snapshot().library().trialsOf(made.name()).stream()
        .flatMap(entry -> shown.snapshot().result(Trials.COMPARED, entry).stream())
        .flatMap(KeptBatch::of)
        .sorted(Comparator.comparing(KeptBatch::seconds).reversed())
        .toList();
  }

  private List<Phrase> told() {
    List<Phrase> lines = new ArrayList<>();
    if (kept.isEmpty()) {
      lines.add(Phrase.sentence(shelf.isPresent() ? "keeping.how.word" : "keeping.how.none"));
      return lines;
    }
    kept.forEach(batch -> tell(batch, lines));
    Optional<KeptBatch> longest = kept.stream()
        .filter(batch -> batch.trial().isEvidence())
        .max(Comparator.comparing(KeptBatch::seconds));
    shelf
        .flatMap(line -> line.objectFigure(Unit.Dimension.TIME))
        .map(Located::value)
        .flatMap(stated -> measure(stated, longest))
        .ifPresent(lines::add);
    if (shelf.isEmpty()) {
      lines.add(Phrase.sentence("keeping.how.unstated"));
    }
    return lines;
  }

  /** The stated time against the longest batch that is evidence for the formula as it stands. */
  private static Optional<Phrase> measure(Quantity stated, Optional<KeptBatch> longest) {
    Optional<Phrase> time = figure("shelf.time", stated);
    if (longest.isEmpty()) {
      return time.map(told -> Phrase.sentence("keeping.how.no-evidence", told));
    }
    boolean isBeyond = stated.highInBase().doubleValue() > longest.get().seconds() * (1 + 1e-9);
    Optional<Phrase> most = time(longest.get());
    return time.flatMap(told -> most.map(
        held -> Phrase.sentence(isBeyond ? "keeping.beyond" : "keeping.covered", told, held)));
  }

  private void tell(KeptBatch batch, List<Phrase> lines) {
    TrialComparison trial = batch.trial();
    String name = trial.trial().name().value();
    List<Phrase> where = new ArrayList<>();
    clause(batch, Connective.AT, Unit.Dimension.TEMPERATURE).ifPresent(where::add);
    clause(batch, Connective.BELOW, Unit.Dimension.HUMIDITY).ifPresent(where::add);
    lines.add(Phrase.sentence(
        "keeping.held",
        shown.named(trial.formula().formula().name().value()),
        time(batch).orElseGet(Phrase::nothing),
        Phrase.given(name),
        where.isEmpty() ? Phrase.words("keeping.where.unknown") : new Phrase.Together(where),
        batch
            .line()
            .text()
            .map(text -> Phrase.words("keeping.held.text", Phrase.given(text.value())))
            .orElseGet(Phrase::nothing)));
    measured(batch, lines);
    if (trial.isOlder()) {
      lines.add(Phrase.sentence("keeping.held.older", Phrase.given(name)));
    }
    if (!trial.changes().isEmpty()) {
      lines.add(Phrase.sentence("keeping.held.changed", Phrase.given(name)));
    }
    if (isCooler(batch)) {
      lines.add(Phrase.sentence("keeping.held.cooler", Phrase.given(name)));
    }
  }

  private static void measured(KeptBatch batch, List<Phrase> lines) {
    List<Phrase> readings = new ArrayList<>();
    reading(batch, TrialQuantity.ACTIVITY, "figure.water-activity.plain").ifPresent(readings::add);
    reading(batch, TrialQuantity.WATER, "figure.moisture").ifPresent(readings::add);
    Phrase name = Phrase.given(batch.trial().trial().name().value());
    lines.add(
        readings.isEmpty()
            ? Phrase.sentence("keeping.measured.none", name)
            : Phrase.sentence("keeping.measured", name, new Phrase.Listing(readings)));
  }

  private static Optional<Phrase> reading(KeptBatch batch, TrialQuantity quantity, String key) {
    String id = id(batch) + "." + quantity.word();
    return batch
        .last(quantity)
        .flatMap(reading -> figure(id, written(reading)).map(value -> {
          Phrase after = reading
              .measurement()
              .line()
              .figure(Connective.AT, Unit.Dimension.TIME)
              .flatMap(time -> figure(id + ".at", time.value()))
              .map(time -> Phrase.words("keeping.measured.after", time))
              .orElseGet(Phrase::nothing);
          return Phrase.together(Phrase.words(key), value, after);
        }));
  }

  private static Quantity written(TrialReading reading) {
    return reading.measurement().figure().value();
  }

  private Optional<Phrase> clause(KeptBatch batch, Connective word, Unit.Dimension dimension) {
    String kind = dimension.name().toLowerCase(Locale.ROOT);
    return batch
        .line()
        .figure(word, dimension)
        .flatMap(figure -> figure(id(batch) + "." + kind, figure.value()))
        .map(value ->
            Phrase.words("clause." + word.name().toLowerCase(Locale.ROOT) + "." + kind, value));
  }

  /** Whether the stated shelf life allows more heat than the batch was kept at. */
  private boolean isCooler(KeptBatch batch) {
    Optional<Double> allowed = shelf
        .flatMap(line -> line.figure(Connective.AT, Unit.Dimension.TEMPERATURE))
        .map(figure -> figure.value().highInBase().doubleValue());
    Optional<Double> had = batch.at().map(figure -> figure.highInBase().doubleValue());
    return allowed
        .flatMap(most -> had.map(most::compareTo))
        .filter(order -> order > 0)
        .isPresent();
  }

  private static Optional<Phrase> time(KeptBatch batch) {
    return figure(id(batch) + ".time", batch.time());
  }

  private static String id(KeptBatch batch) {
    return "kept." + batch.trial().trial().name().value() + "."
        + batch.trial().trial().facts().all("kept").toList().indexOf(batch.line());
  }

  private static Optional<Phrase> figure(String id, Quantity quantity) {
    return SheetFigure.of(id, quantity).map(Phrase::value);
  }
}
