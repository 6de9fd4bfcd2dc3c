package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Thresholds;
import dev.kettlemark.model.Acceptance;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Variant;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.Lazy;
import dev.kettlemark.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;

/** What a rule looks at: one section, what it declares, what follows from it, and whatever it asks for. */
public final class Subject {

  private final Entry entry;
  private final Scope scope;
  private final OptionalInt excess;

  /** Asked for by whoever looks at it: a result that did not must not hold on to it. */
  private final Lazy<Optional<ComputedFormula>> formula;

  private final Consumer<Threshold<?>> asked;

  Subject(Entry entry, Scope scope) {
    this.entry = entry;
    this.scope = scope;
    this.excess = scope.ask(Lookup.excessOf(entry.uri()));
    this.formula =
        Lazy.of(() -> excess.isPresent() ? Optional.empty() : scope.ask(Formulas.computed(entry)));
    this.asked = threshold -> {};
  }

  private Subject(Subject same, Consumer<Threshold<?>> asked) {
    this.entry = same.entry;
    this.scope = same.scope;
    this.excess = same.excess;
    this.formula = same.formula;
    this.asked = asked;
  }

  /** The same subject, which tells of each threshold that it is asked for. */
  Subject telling(Consumer<Threshold<?>> of) {
    return new Subject(this, of);
  }

  public Entry entry() {
    return entry;
  }

  /** The number of characters of a text that is too long to be checked; empty for all others. */
  OptionalInt excess() {
    return excess;
  }

  /** The section's tree, for mistakes of spelling and shape. */
  public Section section() {
    return entry.section();
  }

  public String text() {
    return entry.section().text();
  }

  public Optional<Declaration> declaration() {
    return entry.declaration();
  }

  /** The computed formula; for a variant, with its parent's lines. */
  public Optional<ComputedFormula> formula() {
    return formula.get();
  }

  /** The formula as written in this section; empty for variants and all other sections. */
  public Optional<Formula> writtenFormula() {
    return declaration().flatMap(d -> d instanceof Formula f ? Optional.of(f) : Optional.empty());
  }

  public Optional<Variant> variant() {
    return declaration().flatMap(d -> d instanceof Variant v ? Optional.of(v) : Optional.empty());
  }

  /**
   * Whether a place of the computed formula stands in this section's own text.
   *
   * <p>What a variant inherits is placed at the parent's name; no fix can change it from here.
   */
  public boolean isWrittenHere(Span span) {
    return variant()
        .flatMap(Variant::parent)
        .filter(parent -> parent.span().equals(span))
        .isEmpty();
  }

  /** What the rules find here; for those about acceptances. */
  List<Finding> found() {
    return scope.ask(Rules.told(entry));
  }

  /** The acceptances written in this section. */
  List<Acceptance> acceptances() {
    return Acceptances.in(entry);
  }

  /** What holds here of a threshold. */
  public <T> T threshold(Threshold<T> threshold) {
    asked.accept(threshold);
    return scope.ask(Thresholds.holding(entry.uri(), threshold));
  }

  /** The day at which the library is looked at. */
  public LocalDate today() {
    return scope.ask(Lookup.today());
  }

  /** What the label of the formula or product must and may say; empty for all other sections. */
  public Optional<Label> label() {
    return scope.ask(Labels.label(entry));
  }

  public <T> T ask(Question<T> question) {
    return scope.ask(question);
  }

  public Scope scope() {
    return scope;
  }

  /** What a material name means. */
  public Optional<Declaration> material(String name) {
    return ask(Lookup.of(Kind.MATERIAL, name)).flatMap(Entry::declaration);
  }

  public Optional<Ingredient> ingredient(String name) {
    return material(name)
        .flatMap(d -> d instanceof Ingredient i ? Optional.of(i) : Optional.empty());
  }

  /** Every material name of the library and the pantry; ask only where a name is unknown. */
  public Set<String> materialNames() {
    return ask(Lookup.names(Kind.MATERIAL));
  }
}
