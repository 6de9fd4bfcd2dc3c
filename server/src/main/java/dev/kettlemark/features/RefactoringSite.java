package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Expectation;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Variant;
import dev.kettlemark.text.LineEnds;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The lines of a formula or variant that a user has selected; all spans count from the section's start.
 *
 * @param computed the formula with all that follows from it
 * @param lines from the start of the first selected line to the end of the last
 */
record RefactoringSite(
    Snapshot snapshot, Document document, Entry entry, ComputedFormula computed, Span lines) {

  /** Empty outside of formulas and variants, and in the pantry, which nobody can write into. */
  static Optional<RefactoringSite> at(Snapshot snapshot, Document document, Span range) {
    if (document.builtIn()) {
      return Optional.empty();
    }
    Entry entry = document.entryAt(range.start());
    Span lines = wholeLines(document.text().source(), range);
    int from = entry.placed().offset();
    int to = entry.placed().end();
    Span own = new Span(Math.max(lines.start(), from) - from, Math.min(lines.end(), to) - from);
    return Formulas.computed(snapshot, entry)
        .map(computed -> new RefactoringSite(snapshot, document, entry, computed, own));
  }

  /** A selection that ends at the start of a line does not mean that line. */
  private static Span wholeLines(Source source, Span range) {
    Span first = source.line(source.lineAt(range.start()));
    int lastNumber = source.lineAt(range.end());
    Span last = source.line(lastNumber);
    boolean endsBefore = range.end() == last.start() && range.end() > first.end();
    return first.to(endsBefore ? source.line(lastNumber - 1) : last);
  }

  /** The formula as the section writes it; empty for a variant. */
  Optional<Formula> formula() {
    return entry
        .declaration()
        .flatMap(d -> d instanceof Formula formula ? Optional.of(formula) : Optional.empty());
  }

  Optional<Variant> variant() {
    return entry
        .declaration()
        .flatMap(d -> d instanceof Variant variant ? Optional.of(variant) : Optional.empty());
  }

  String name() {
    return computed.formula().name().value();
  }

  String text() {
    return entry.section().text();
  }

  boolean isSelected(Span span) {
    return !computed.formula().inherits(span) && lines.meets(span);
  }

  boolean hasSelection() {
    return text().substring(lines.start(), lines.end()).indexOf('\n') >= 0;
  }

  /** Whether the selection lies above the first stage, where the formula as a whole is spoken of. */
  boolean isAboveStages() {
    return entry.section().lines().stream()
        .filter(StageEditing::isHeading)
        .findFirst()
        .filter(heading -> heading.span().start() <= lines.end())
        .isEmpty();
  }

  /** Indices of the amount lines that are selected and that a refactoring can write anew. */
  List<Integer> amounts() {
    return IntStream.range(0, computed.amounts().lines().size())
        .boxed()
        .filter(i -> isSelected(line(i).span()) && isPlain(line(i)))
        .toList();
  }

  /** The one amount line that is selected. */
  Optional<Integer> amount() {
    return Optional.of(amounts()).filter(found -> found.size() == 1).map(found -> found.get(0));
  }

  LineAmount lineAmount(int index) {
    return computed.amounts().lines().get(index);
  }

  AmountLine line(int index) {
    return lineAmount(index).line();
  }

  /** Whether the name stands behind the amount, so that the amount is one stretch of text. */
  private static boolean isPlain(AmountLine line) {
    return line.measure().span().end() <= line.ingredient().span().start();
  }

  boolean isPlainThroughout() {
    return computed.formula().amounts().stream().allMatch(RefactoringSite::isPlain);
  }

  /** A line's amount written anew. */
  TextEdit measured(int index, String amount) {
    return new TextEdit(line(index).measure().span(), amount);
  }

  /** The start of the line on which an offset stands. */
  int lineStart(int offset) {
    return Math.max(text().lastIndexOf('\n', offset - 1), text().lastIndexOf('\r', offset - 1)) + 1;
  }

  /** The start of the next line, or the end of the text. */
  int nextLine(int offset) {
    int next = LineEnds.next(text(), offset);
    return next < 0 ? text().length() : next;
  }

  /** Whether the formula says what yield is expected of it. */
  boolean expectsYield() {
    return computed
        .formula()
        .facts()
        .all("expect")
        .flatMap(fact -> fact.objectNames().stream())
        .map(Located::value)
        .anyMatch(Expectation.YIELD::equals);
  }

  /** A line that is put below another. */
  TextEdit below(Span line, String content) {
    int next = LineEnds.next(text(), line.end());
    return next < 0
        ? TextEdit.insert(text().length(), lineBreak() + content)
        : TextEdit.insert(next, content + lineBreak());
  }

  String lineBreak() {
    return LineEnds.of(text());
  }

  /** Edits of the section, laid out. */
  Rewriting rewriting(List<TextEdit> edits) {
    return Rewriting.of(
        document,
        edits.stream().map(edit -> edit.shiftedBy(entry.placed().offset())).toList());
  }

  /** The library after a rewriting. */
  Snapshot next(Rewriting rewriting) {
    return snapshot.tried(snapshot.library().with(rewriting.after()));
  }

  /** What the formula becomes by a rewriting that leaves its name. */
  Optional<ComputedFormula> after(Rewriting rewriting) {
    return after(rewriting, next(rewriting));
  }

  private Optional<ComputedFormula> after(Rewriting rewriting, Snapshot next) {
    return rewriting.after().entries().stream()
        .filter(other ->
            other.declaration().filter(d -> d.name().value().equals(name())).isPresent())
        .findFirst()
        .flatMap(other -> Formulas.computed(next, other));
  }

  /** The variants of the formula, and theirs, by name. */
  List<String> variants() {
    List<Entry> all = snapshot.library().entries(Kind.MATERIAL).stream()
        .filter(other -> other.declaration().filter(Variant.class::isInstance).isPresent())
        .toList();
    Set<String> family = new LinkedHashSet<>(Set.of(name()));
    boolean grew = true;
    while (grew) {
      grew = false;
      for (Entry other : all) {
        Variant variant = (Variant) other.declaration().orElseThrow();
        grew |= variant.parent().filter(p -> family.contains(p.value())).isPresent()
            && family.add(variant.name().value());
      }
    }
    return family.stream().filter(other -> !other.equals(name())).toList();
  }

  /** Whether every variant of the formula weighs and makes the same as before. */
  private boolean keepsVariants(Snapshot next) {
    return variants().stream().allMatch(variant -> {
      Optional<ComputedFormula> old = Formulas.computed(variant).ask(snapshot);
      Optional<ComputedFormula> now = Formulas.computed(variant).ask(next);
      return old.flatMap(one -> now.filter(other -> KeptGrams.everyMaterial(one, other)
              && other.resolved().missed().size() == one.resolved().missed().size()))
          .isPresent();
    });
  }

  /** Whether the shares of every variant of the formula still add up to what they did. */
  boolean keepsTotalsOfVariants(Rewriting rewriting) {
    List<String> variants = variants();
    Snapshot next = variants.isEmpty() ? snapshot : next(rewriting);
    return variants.stream().allMatch(variant -> {
      Optional<ComputedFormula> old = Formulas.computed(variant).ask(snapshot);
      Optional<ComputedFormula> now = Formulas.computed(variant).ask(next);
      return old.flatMap(one ->
              now.filter(other -> other.amounts().total().equals(one.amounts().total())))
          .isPresent();
    });
  }

  /** A refactoring of the section, if what it makes of the formula is as promised. */
  Optional<Refactoring> refactoring(
      String title,
      Refactoring.Kind kind,
      List<TextEdit> edits,
      Predicate<ComputedFormula> promise) {
    return refactoring(title, kind, edits, (after, next) -> promise.test(after));
  }

  /** The same for one that keeps every gram, also in the variants of the formula. */
  Optional<Refactoring> sameGrams(String title, Refactoring.Kind kind, List<TextEdit> edits) {
    return refactoring(
        title,
        kind,
        edits,
        (after, next) -> KeptGrams.everyLine(computed, after) && keepsVariants(next));
  }

  private Optional<Refactoring> refactoring(
      String title,
      Refactoring.Kind kind,
      List<TextEdit> edits,
      BiPredicate<ComputedFormula, Snapshot> promise) {
    Rewriting rewriting = rewriting(edits);
    if (rewriting.edits().isEmpty()) {
      return Optional.empty();
    }
    Snapshot next = next(rewriting);
    return after(rewriting, next)
        .filter(after -> promise.test(after, next))
        .map(after -> Refactoring.of(title, kind, document.uri(), rewriting.edits()));
  }
}
