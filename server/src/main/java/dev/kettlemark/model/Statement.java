package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A fact or a step: a word, what it speaks of, and its circumstances.
 *
 * @param word the verb or fact word it starts with
 * @param objects what stands behind it up to the first connective; for a step without objects, all
 *     that the stage holds is meant
 * @param clauses connectives and what stands behind them, in order
 * @param span the whole line
 */
public record Statement(
    Located<String> word,
    List<Located<Operand>> objects,
    List<StatementClause> clauses,
    Span span) {

  public Statement {
    objects = List.copyOf(objects);
    clauses = List.copyOf(clauses);
  }

  /** Whether it starts with this word. */
  public boolean is(String other) {
    return word.value().equals(other);
  }

  /** The names among the objects, in order. */
  public List<Located<String>> objectNames() {
    return names(objects.stream()).toList();
  }

  /** Every name behind one connective. */
  public List<Located<String>> names(Connective connective) {
    return names(operands(connective)).toList();
  }

  /** The first figure of a dimension among the objects. */
  public Optional<Located<Quantity>> objectFigure(Unit.Dimension dimension) {
    return objects.stream()
        .flatMap(Statement::figures)
        .filter(figure -> figure.value().measures(dimension))
        .findFirst();
  }

  /** The first quoted text on the line. */
  public Optional<Located<String>> text() {
    return Stream.concat(
            objects.stream(), clauses.stream().flatMap(clause -> clause.operands().stream()))
        .flatMap(operand -> operand.value() instanceof Operand.Text text
            ? Stream.of(new Located<>(text.text(), operand.span()))
            : Stream.empty())
        .findFirst();
  }

  /** The first figure of a dimension behind one connective. */
  public Optional<Located<Quantity>> figure(Connective connective, Unit.Dimension dimension) {
    return operands(connective)
        .flatMap(Statement::figures)
        .filter(figure -> figure.value().measures(dimension))
        .findFirst();
  }

  /** The first figure of a dimension on the whole line. */
  public Optional<Located<Quantity>> figure(Unit.Dimension dimension) {
    return Stream.concat(
            objects.stream(), clauses.stream().flatMap(clause -> clause.operands().stream()))
        .flatMap(Statement::figures)
        .filter(figure -> figure.value().measures(dimension))
        .findFirst();
  }

  /** Every date behind one connective. */
  public List<Located<LocalDate>> days(Connective connective) {
    return operands(connective)
        .flatMap(operand -> operand.value() instanceof Operand.Day day
            ? Stream.of(new Located<>(day.date(), operand.span()))
            : Stream.empty())
        .toList();
  }

  public boolean has(Connective connective) {
    return clauses.stream().anyMatch(clause -> clause.word() == connective);
  }

  /** Whether a word stands behind a connective, as in {@code under lid}. */
  public boolean has(Connective connective, String name) {
    return names(connective).stream().anyMatch(found -> found.value().equals(name));
  }

  Statement relocated(Span place) {
    return new Statement(
        word.at(place),
        objects.stream().map(o -> o.at(place)).toList(),
        clauses.stream().map(c -> c.relocated(place)).toList(),
        place);
  }

  private Stream<Located<Operand>> operands(Connective connective) {
    return clauses.stream()
        .filter(clause -> clause.word() == connective)
        .flatMap(clause -> clause.operands().stream());
  }

  private static Stream<Located<String>> names(Stream<Located<Operand>> operands) {
    return operands.flatMap(operand -> operand.value() instanceof Operand.Name name
        ? Stream.of(new Located<>(name.word(), operand.span()))
        : Stream.empty());
  }

  private static Stream<Located<Quantity>> figures(Located<Operand> operand) {
    return operand.value() instanceof Operand.Figure figure
        ? Stream.of(new Located<>(figure.quantity(), operand.span()))
        : Stream.empty();
  }
}
