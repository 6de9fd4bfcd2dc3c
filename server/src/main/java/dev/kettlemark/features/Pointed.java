package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Unit;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Group;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.Word;
import dev.kettlemark.text.Span;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a pointer points at.
 *
 * @param entry the section
 * @param offset counted from the section's start
 */
record Pointed(Snapshot snapshot, Entry entry, int offset) {

  static Pointed at(Snapshot snapshot, Document document, int offset) {
    Entry entry = document.entryAt(offset);
    return new Pointed(snapshot, entry, offset - entry.placed().offset());
  }

  /** The line; empty between lines. */
  Optional<Line> line() {
    return entry.section().lines().stream()
        .filter(line -> line.span().touches(offset))
        .findFirst();
  }

  /** The atom on the line, its leading word not counted. */
  Optional<Atom> atom() {
    return line()
        .flatMap(line -> atoms(line).filter(atom -> atom.span().touches(offset)).findFirst());
  }

  /** The figure on the line. */
  Optional<Atom.QuantityAtom> figure() {
    return atom()
        .flatMap(atom ->
            atom instanceof Atom.QuantityAtom figure ? Optional.of(figure) : Optional.empty());
  }

  /** The plain word: the one that leads the line, or a name on it. */
  Optional<Word> word() {
    Optional<Word> head = line()
        .flatMap(line -> line instanceof Line.StatementLine statement
            ? Optional.of(statement.head())
            : Optional.empty());
    return head.filter(word -> word.span().touches(offset))
        .or(() -> atom()
            .flatMap(atom -> atom instanceof Atom.NameAtom name
                ? Optional.of(new Word(name.text(), name.span()))
                : Optional.empty()));
  }

  /** Whether the pointer stands on a line that a formula's stage counts as a step. */
  Optional<Line.StatementLine> statement() {
    return line()
        .flatMap(line -> line instanceof Line.StatementLine statement
            ? Optional.of(statement)
            : Optional.empty());
  }

  /** The name under the pointer, if it speaks of a thing of that kind. */
  Optional<Symbols.Found> named(Symbol.Kind kind) {
    return Symbols.at(snapshot, entry, offset).filter(found -> found.symbol().kind() == kind);
  }

  /** The formula that the section speaks of: its own, or the one that a trial made. */
  Optional<ComputedFormula> formula() {
    Optional<String> made = entry
        .declaration()
        .flatMap(
            d -> d instanceof Trial trial ? trial.formula().map(Located::value) : Optional.empty());
    return made.isPresent()
        ? Formulas.computed(made.get()).ask(snapshot)
        : Formulas.computed(snapshot, entry);
  }

  HoverText text(Markdown markdown, Span span) {
    return new HoverText(markdown.text(), entry.place(span).span());
  }

  /** Every figure of a line in order. */
  static Stream<Atom.QuantityAtom> figures(Line line) {
    return atoms(line)
        .flatMap(
            atom -> atom instanceof Atom.QuantityAtom figure ? Stream.of(figure) : Stream.empty());
  }

  /** Every temperature of a line in order; a thermometer's step is a difference and no temperature. */
  static Stream<Atom.QuantityAtom> temperatures(Line line) {
    boolean startsWithStep =
        line instanceof Line.StatementLine fact && fact.head().text().equals("thermometer");
    return figures(line)
        .filter(figure -> figure.measures(Unit.Dimension.TEMPERATURE))
        .filter(figure -> !startsWithStep
            || line.clauses().stream().anyMatch(clause -> clause.span().contains(figure.span())));
  }

  /** Every atom of a line in order, but for the word that leads it. */
  static Stream<Atom> atoms(Line line) {
    Stream<Atom> leading = line instanceof Line.AmountLine amount
        ? Stream.of(amount.measure())
        : line instanceof Line.TakeLine take
            ? take.share().stream().map(Atom.class::cast)
            : Stream.empty();
    Stream<Group> groups = Stream.concat(
        line.objects().stream(),
        line.clauses().stream().map(Clause::groups).flatMap(g -> g.stream()));
    return Stream.concat(leading, groups.flatMap(group -> group.atoms().stream()));
  }
}
