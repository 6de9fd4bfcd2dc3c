package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
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
    List<Located<String>> names = new ArrayList<>(objects.size());
    addNames(objects, names);
    return Collections.unmodifiableList(names);
  }

  /** The first of them. */
  public Optional<Located<String>> objectName() {
    for (Located<Operand> operand : objects) {
      if (operand.value() instanceof Operand.Name name) {
        return Optional.of(new Located<>(name.word(), operand.span()));
      }
    }
    return Optional.empty();
  }

  /** Whether a name is among the objects. */
  boolean isOf(String name) {
    return isAmong(objects, name);
  }

  /** Every name behind one connective. */
  public List<Located<String>> names(Connective connective) {
    if (!has(connective)) {
      return List.of();
    }
    List<Located<String>> names = new ArrayList<>();
    for (StatementClause clause : clauses) {
      if (clause.word() == connective) {
        addNames(clause.operands(), names);
      }
    }
    return Collections.unmodifiableList(names);
  }

  /** The first figure of a dimension among the objects. */
  public Optional<Located<Quantity>> objectFigure(Unit.Dimension dimension) {
    return figure(objects, dimension);
  }

  /** The first quoted text on the line. */
  public Optional<Located<String>> text() {
    Optional<Located<String>> text = text(objects);
    for (int i = 0; text.isEmpty() && i < clauses.size(); i++) {
      text = text(clauses.get(i).operands());
    }
    return text;
  }

  private static Optional<Located<String>> text(List<Located<Operand>> operands) {
    for (Located<Operand> operand : operands) {
      if (operand.value() instanceof Operand.Text text) {
        return Optional.of(new Located<>(text.text(), operand.span()));
      }
    }
    return Optional.empty();
  }

  /** Every name on the line, in order. */
  public List<Located<String>> names() {
    List<Located<String>> names = new ArrayList<>(objects.size());
    addNames(objects, names);
    for (StatementClause clause : clauses) {
      addNames(clause.operands(), names);
    }
    return Collections.unmodifiableList(names);
  }

  /** The first figure of a dimension behind one connective. */
  public Optional<Located<Quantity>> figure(Connective connective, Unit.Dimension dimension) {
    for (StatementClause clause : clauses) {
      if (clause.word() == connective) {
        Optional<Located<Quantity>> figure = figure(clause.operands(), dimension);
        if (figure.isPresent()) {
          return figure;
        }
      }
    }
    return Optional.empty();
  }

  /** The first figure of a dimension on the whole line. */
  public Optional<Located<Quantity>> figure(Unit.Dimension dimension) {
    Optional<Located<Quantity>> figure = objectFigure(dimension);
    for (int i = 0; figure.isEmpty() && i < clauses.size(); i++) {
      figure = figure(clauses.get(i).operands(), dimension);
    }
    return figure;
  }

  /** Rules ask this of every step time and again; a loop is several times as fast as a stream. */
  private static Optional<Located<Quantity>> figure(
      List<Located<Operand>> operands, Unit.Dimension dimension) {
    for (Located<Operand> operand : operands) {
      if (operand.value() instanceof Operand.Figure figure
          && figure.quantity().measures(dimension)) {
        return Optional.of(new Located<>(figure.quantity(), operand.span()));
      }
    }
    return Optional.empty();
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
    for (StatementClause clause : clauses) {
      if (clause.word() == connective) {
        return true;
      }
    }
    return false;
  }

  /** Whether a word stands behind a connective, as in {@code under lid}. */
  public boolean has(Connective connective, String name) {
    for (StatementClause clause : clauses) {
      if (clause.word() == connective && isAmong(clause.operands(), name)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isAmong(List<Located<Operand>> operands, String name) {
    for (Located<Operand> operand : operands) {
      if (operand.value() instanceof Operand.Name found && found.word().equals(name)) {
        return true;
      }
    }
    return false;
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

  private static void addNames(List<Located<Operand>> operands, List<Located<String>> names) {
    for (Located<Operand> operand : operands) {
      if (operand.value() instanceof Operand.Name name) {
        names.add(new Located<>(name.word(), operand.span()));
      }
    }
  }
}
