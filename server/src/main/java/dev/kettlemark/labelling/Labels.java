package dev.kettlemark.labelling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.library.Task;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import java.util.Optional;

/** The computations over what a label says, and the questions by which other computations use them. */
public enum Labels {
  ;

  /** What a formula, variant or product is made of; empty for other sections. */
  public static final Task<Optional<Makeup>> MAKEUP = Labels::computeMakeup;

  /** What the label of a formula, variant or product says; empty for other sections. */
  public static final Task<Optional<Label>> LABEL = (entry, scope) -> scope
      .ask(Question.of(MAKEUP, entry))
      .flatMap(makeup -> entry
          .declaration()
          .map(declaration -> new LabelComputation(
                  entry, declaration, scope.ask(Formulas.computed(entry)), makeup, scope)
              .compute()));

  /** What a formula name is made of; ask {@code Uses} for circles first. */
  public static Question<Optional<Makeup>> makeup(String name) {
    return Question.named(MAKEUP, name);
  }

  /** The label of an entry, as a question of another computation. */
  public static Question<Optional<Label>> label(Entry entry) {
    return Question.of(LABEL, entry);
  }

  /** The label of an entry in a snapshot. */
  public static Optional<Label> label(Snapshot snapshot, Entry entry) {
    return snapshot.result(LABEL, entry);
  }

  private static Optional<Makeup> computeMakeup(Entry entry, Scope scope) {
    Optional<ComputedFormula> formula = scope.ask(Formulas.computed(entry));
    if (formula.isPresent()) {
      return Optional.of(new FormulaMakeup(entry, formula.get(), scope).compute());
    }
    Optional<ComputedProduct> product = scope.ask(Products.computed(entry));
    return product.map(computed -> new ProductMakeup(entry, computed, scope).compute());
  }
}
