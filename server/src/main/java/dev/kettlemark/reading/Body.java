package dev.kettlemark.reading;

import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.StatementClause;
import dev.kettlemark.model.Unit;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Group;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The lines below a heading, and the problems met while reading them. */
final class Body {

  /**
   * No section on any bench comes near it; all that follows from a section may then look at each of
   * its lines for each of its lines.
   */
  private static final int MOST_LINES = 1000;

  /** No line on any bench comes near it, for the same reason. */
  private static final int MOST_THINGS = 200;

  private final Section section;
  private final List<ReadingProblem> problems;

  Body(Section section, List<ReadingProblem> problems) {
    this.section = section;
    this.problems = problems;
    if (section.lines().size() > MOST_LINES) {
      report(
          section.lines().get(MOST_LINES).span(),
          "a section has at most " + MOST_LINES + " lines; from here on nothing is read");
    }
    for (Line line : lines()) {
      if (things(line) > MOST_THINGS) {
        report(
            line.span(),
            "a line holds at most " + MOST_THINGS + " things; what stands behind is not read");
      }
    }
  }

  List<Line> lines() {
    return section.lines().subList(1, Math.min(MOST_LINES, section.lines().size()));
  }

  private static int things(Line line) {
    int things = line.clauses().size() + atoms(line.objects());
    for (Clause clause : line.clauses()) {
      things += atoms(clause.groups());
    }
    return things;
  }

  private static int atoms(List<Group> groups) {
    int atoms = 0;
    for (Group group : groups) {
      atoms += group.atoms().size();
    }
    return atoms;
  }

  List<ReadingProblem> problems() {
    return problems;
  }

  void report(Span span, String message) {
    problems.add(new ReadingProblem(span, message));
  }

  /** Reports a word that is not among those that may stand there, with the nearest of them. */
  void reportWord(Span span, String message, String word, Collection<String> known) {
    problems.add(new ReadingProblem(
        span, message + Suggestions.sentence(word, known), Suggestions.near(word, known)));
  }

  /** The facts of a section that has nothing but facts. */
  List<Statement> facts(Set<String> words, String kind) {
    List<Statement> facts = new ArrayList<>();
    for (Line line : lines()) {
      if (line instanceof Line.StatementLine statement) {
        if (known(statement, words, "fact of " + kind)) {
          facts.add(statement(statement));
        }
      } else {
        reportMisplaced(line, "in " + kind);
      }
    }
    return facts;
  }

  /** Tells of a line that has no place here; empty and unreadable lines need no further word. */
  void reportMisplaced(Line line, String place) {
    if (line instanceof Line.EmptyLine || line instanceof Line.UnreadableLine) {
      return;
    }
    report(line.span(), "this line has no place " + place);
  }

  /** Whether the head is one of the words; tells the nearest ones if it is not. */
  boolean known(Line.StatementLine statement, Set<String> words, String kind) {
    String head = statement.head().text();
    if (words.contains(head)) {
      return true;
    }
    reportWord(statement.head().span(), Excerpt.of(head) + " is no " + kind, head, words);
    return false;
  }

  /** Whether a line has a figure without a value, which is told by a rule of its own. */
  boolean hasMalformedFigure(Span line) {
    return lines().stream()
        .filter(candidate -> candidate.span().equals(line))
        .flatMap(candidate -> candidate.objects().stream())
        .flatMap(group -> group.atoms().stream())
        .anyMatch(atom ->
            atom instanceof Atom.QuantityAtom figure && figure.quantity().isEmpty());
  }

  static Statement statement(Line.StatementLine line) {
    return new Statement(
        new Located<>(line.head().text(), line.head().span()),
        operands(line.objects()),
        clauses(line.clauses()),
        line.span());
  }

  static List<StatementClause> clauses(List<Clause> clauses) {
    List<StatementClause> read = new ArrayList<>(clauses.size());
    for (Clause clause : clauses.subList(0, Math.min(clauses.size(), MOST_THINGS))) {
      read.add(new StatementClause(clause.word(), operands(clause.groups()), clause.span()));
    }
    return read;
  }

  static List<Located<Operand>> operands(List<Group> groups) {
    List<Located<Operand>> operands = new ArrayList<>();
    int count = 0;
    for (Group group : groups) {
      for (Atom atom : group.atoms()) {
        if (count++ < MOST_THINGS) {
          operand(atom).ifPresent(operand -> operands.add(new Located<>(operand, atom.span())));
        }
      }
    }
    return operands;
  }

  private static Optional<Operand> operand(Atom atom) {
    if (atom instanceof Atom.QuantityAtom quantity) {
      return quantity.quantity().map(Operand.Figure::new);
    }
    if (atom instanceof Atom.NameAtom name) {
      return Optional.of(new Operand.Name(name.text()));
    }
    if (atom instanceof Atom.TextAtom text) {
      return Optional.of(new Operand.Text(text.text()));
    }
    if (atom instanceof Atom.DateAtom date) {
      return date.date().map(Operand.Day::new);
    }
    if (atom instanceof Atom.RateAtom rate) {
      return Unit.of(rate.unit()).map(Operand.Rate::new);
    }
    if (atom instanceof Atom.ReservedAtom word) {
      return Optional.of(new Operand.Name(word.text()));
    }
    return Optional.empty();
  }
}
