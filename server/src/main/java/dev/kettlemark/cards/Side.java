package dev.kettlemark.cards;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.ProcessResult;
import dev.kettlemark.analysis.Trials;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Trial;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.Titles;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * One of two formulas, followed through its stages with the batch that both are compared at.
 *
 * @param snapshot the state of its library
 * @param state what that state is called where it is not the present one, such as {@code HEAD~1}
 */
public record Side(
    Snapshot snapshot,
    Entry entry,
    ComputedFormula formula,
    Optional<Label> label,
    Optional<String> state,
    Mass batch,
    ProcessResult process) {

  /** A formula or variant of a library; unknown where it cannot be worked out. */
  public static Outcome<Side> of(
      Snapshot snapshot, String name, Optional<String> state, Optional<Mass> batch) {
    Optional<Entry> entry = snapshot.library().find(Kind.MATERIAL, name);
    Optional<ComputedFormula> formula = entry.flatMap(e -> Formulas.computed(snapshot, e));
    if (entry.isEmpty() || formula.isEmpty()) {
      return Outcome.unknown(
          Reason.MISSING_FIGURE,
          "`%s` is no formula that can be worked out%s",
          name,
          state.map(at -> " in " + at).orElse(""));
    }
    Mass charge = batch.orElseGet(() -> ownBatch(formula.get()));
    return Outcome.known(new Side(
        snapshot,
        entry.get(),
        formula.get(),
        Labels.label(snapshot, entry.get()),
        state,
        charge,
        formula.get().processWith(charge)));
  }

  private static Mass ownBatch(ComputedFormula formula) {
    return formula
        .amounts()
        .charge()
        .map(grams -> Mass.ofGrams(grams.doubleValue()))
        .orElse(ComputedFormula.NOMINAL_CHARGE);
  }

  /** The same formula with another batch. */
  Side with(Mass other) {
    return new Side(snapshot, entry, formula, label, state, other, formula.processWith(other));
  }

  public String name() {
    return formula.formula().name().value();
  }

  /** The display name, with the state of the library where that is another. */
  public String title() {
    return formula.formula().shownName() + state.map(at -> " (" + at + ")").orElse("");
  }

  /** The same in the language of whoever reads it, where the source has a name in it. */
  Phrase called() {
    // A variant's formula bears the facts of its parent, and with them its names.
    Phrase own =
        new Phrase.Titled(titles().of(entry.declaration().orElseGet(formula::formula)), false);
    return state.map(at -> Phrase.together(own, Phrase.given("(" + at + ")"))).orElse(own);
  }

  /** A material by its display name in the language of whoever reads it. */
  Phrase called(String material) {
    return new Phrase.Titled(titles().of(material), false);
  }

  private Titles titles() {
    return Titles.of(snapshot, formula.kitchen().house());
  }

  /** As the source counts it. */
  public Optional<String> version() {
    return FormulaVersion.of(formula.formula().facts())
        .flatMap(FormulaVersion::number)
        .map(number -> Display.trimmed(number.doubleValue(), 3));
  }

  /** How the finished mass of this very batch eats and keeps. */
  Outcome<MassFigures> figures() {
    return process
        .last()
        .map(last -> Outcome.known(MassFigures.of(last.left(), formula.kitchen())))
        .orElseGet(() -> MassFigures.of(formula));
  }

  /** What is weighed in of each material, all its lines together, in order of their first lines. */
  Map<String, Outcome<BigFraction>> amounts() {
    Map<String, Outcome<BigFraction>> amounts = new LinkedHashMap<>();
    for (LineAmount line : formula.amounts().lines()) {
      amounts.merge(
          line.line().ingredient().value(),
          line.share(),
          (one, other) -> Outcome.both(one, other, BigFraction::add));
    }
    return amounts;
  }

  Optional<Ingredient> ingredient(String material) {
    return formula.material(material).flatMap(Material::ingredient);
  }

  /** The batches that were made of it. */
  public List<Trial> trials() {
    return snapshot.library().trialsOf(name()).stream()
        .flatMap(trial -> Trials.trial(trial).stream())
        .toList();
  }
}
