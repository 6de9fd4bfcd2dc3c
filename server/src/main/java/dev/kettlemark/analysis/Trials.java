package dev.kettlemark.analysis;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.library.Task;
import dev.kettlemark.model.Trial;
import java.util.List;
import java.util.Optional;

/** The computations over trials, and the questions by which others use them. */
public enum Trials {
  ;

  /** A trial beside its formula; empty for other sections, and where the formula is not known. */
  public static final Task<Optional<TrialComparison>> COMPARED = Trials::compare;

  /** The comparison of an entry. */
  public static Question<Optional<TrialComparison>> compared(Entry entry) {
    return Question.of(COMPARED, entry);
  }

  /** The trial that an entry declares. */
  public static Optional<Trial> trial(Entry entry) {
    return entry
        .declaration()
        .flatMap(d -> d instanceof Trial trial ? Optional.of(trial) : Optional.empty());
  }

  /** Every trial that can be compared, in order of URI and place. */
  public static List<TrialComparison> all(Snapshot snapshot) {
    return snapshot.library().entries(Kind.TRIAL).stream()
        .flatMap(entry -> snapshot.result(COMPARED, entry).stream())
        .toList();
  }

  private static Optional<TrialComparison> compare(Entry entry, Scope scope) {
    return trial(entry)
        .flatMap(trial -> trial
            .formula()
            .map(name -> name.value())
            .flatMap(name -> scope.ask(
                Formulas.computedAt(name, trial.house().map(h -> h.value()).orElse(""))))
            .map(formula -> TrialComparison.of(trial, formula)));
  }

  /** The trials of a formula, as declared. */
  public static List<Trial> of(String formula, Scope scope) {
    return scope.ask(Lookup.trialsOf(formula)).stream()
        .flatMap(entry -> trial(entry).stream())
        .toList();
  }
}
