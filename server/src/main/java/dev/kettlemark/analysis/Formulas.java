package dev.kettlemark.analysis;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.library.Task;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Variant;
import java.util.List;
import java.util.Optional;

/** The computations over formulas, and the questions by which other computations use them. */
public enum Formulas {
  ;

  /** A formula or variant with nothing left to look up; empty for other sections. */
  public static final Task<Optional<ResolvedFormula>> RESOLVED = Formulas::resolve;

  /** A formula or variant with all that follows from it; empty for other sections. */
  public static final Task<Optional<ComputedFormula>> COMPUTED =
      (entry, scope) -> compute(entry, scope, Lookup.houseFor(entry.uri()));

  /** What a formula name means, resolved. */
  public static Question<Optional<ResolvedFormula>> resolved(String name) {
    return Question.named(RESOLVED, name);
  }

  /** What a formula name means, computed; ask {@link Uses} for circles first. */
  public static Question<Optional<ComputedFormula>> computed(String name) {
    return Question.named(COMPUTED, name);
  }

  /** What a formula name means, computed for a house that is named; as by default where it is not known. */
  public static Question<Optional<ComputedFormula>> computedAt(String name, String house) {
    return new ComputedElsewhere(name, house);
  }

  /** The computed formula of an entry, as a question of another computation. */
  public static Question<Optional<ComputedFormula>> computed(Entry entry) {
    return Question.of(COMPUTED, entry);
  }

  /** The computed formula of an entry in a snapshot. */
  public static Optional<ComputedFormula> computed(Snapshot snapshot, Entry entry) {
    return snapshot.result(COMPUTED, entry);
  }

  /** Whether a name means a formula or a variant that can be worked out. */
  public static boolean isFormula(Snapshot snapshot, String name) {
    return computed(name).ask(snapshot).isPresent();
  }

  private record ComputedElsewhere(String name, String house)
      implements Question<Optional<ComputedFormula>> {
    @Override
    public Optional<ComputedFormula> ask(Snapshot snapshot) {
      Optional<Entry> entry = snapshot.find(Kind.MATERIAL, name);
      Optional<Entry> elsewhere = snapshot
          .find(Kind.HOUSE, house)
          .filter(found -> entry
              .flatMap(e -> snapshot.houseFor(e.uri()))
              .filter(found::equals)
              .isEmpty());
      Task<Optional<ComputedFormula>> task =
          elsewhere.isPresent() ? new ComputedAt(house) : COMPUTED;
      return entry.flatMap(e -> snapshot.result(task, e));
    }
  }

  private record ComputedAt(String house) implements Task<Optional<ComputedFormula>> {
    @Override
    public Optional<ComputedFormula> compute(Entry entry, Scope scope) {
      return Formulas.compute(entry, scope, Lookup.of(Kind.HOUSE, house));
    }
  }

  private static Optional<ComputedFormula> compute(
      Entry entry, Scope scope, Question<Optional<Entry>> house) {
    return resolve(entry, scope)
        .map(resolved -> new FormulaComputation(entry, resolved, scope, house).compute());
  }

  private static Optional<ResolvedFormula> resolve(Entry entry, Scope scope) {
    if (entry.declaration().isEmpty()) {
      return Optional.empty();
    }
    if (entry.declaration().get() instanceof Formula formula) {
      return Optional.of(new ResolvedFormula(formula, List.of()));
    }
    if (entry.declaration().get() instanceof Variant variant
        && variant.parent().isPresent()
        && !Uses.isTooDeep(variant, scope)) {
      return scope
          .ask(resolved(variant.parent().get().value()))
          .map(parent -> VariantResolution.of(variant, parent.formula()));
    }
    return Optional.empty();
  }
}
