package dev.kettlemark.syntax;

import dev.kettlemark.grammar.KettleParser;
import dev.kettlemark.grammar.KettleParser.AmountLineContext;
import dev.kettlemark.grammar.KettleParser.AtomContext;
import dev.kettlemark.grammar.KettleParser.ClauseContext;
import dev.kettlemark.grammar.KettleParser.DateAtomContext;
import dev.kettlemark.grammar.KettleParser.DefinitionLineContext;
import dev.kettlemark.grammar.KettleParser.EmptyLineContext;
import dev.kettlemark.grammar.KettleParser.GroupContext;
import dev.kettlemark.grammar.KettleParser.HeadlessLineContext;
import dev.kettlemark.grammar.KettleParser.LineContext;
import dev.kettlemark.grammar.KettleParser.ListContext;
import dev.kettlemark.grammar.KettleParser.LooseLineContext;
import dev.kettlemark.grammar.KettleParser.MemberContext;
import dev.kettlemark.grammar.KettleParser.NameAtomContext;
import dev.kettlemark.grammar.KettleParser.QuantityContext;
import dev.kettlemark.grammar.KettleParser.RateAtomContext;
import dev.kettlemark.grammar.KettleParser.ReservedAtomContext;
import dev.kettlemark.grammar.KettleParser.SectionLineContext;
import dev.kettlemark.grammar.KettleParser.SectionWordAtomContext;
import dev.kettlemark.grammar.KettleParser.StatementLineContext;
import dev.kettlemark.grammar.KettleParser.StrayAtomContext;
import dev.kettlemark.grammar.KettleParser.SufficientLineContext;
import dev.kettlemark.grammar.KettleParser.TakeAllLineContext;
import dev.kettlemark.grammar.KettleParser.TakePartLineContext;
import dev.kettlemark.grammar.KettleParser.TextAtomContext;
import dev.kettlemark.grammar.KettleParserBaseVisitor;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.Span;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.hipparchus.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** Turns ANTLR's tree of a line into our own; what recovery left incomplete is left out. */
final class LineBuilder {

  /** Nobody writes such a line; all that follows may then look at each of its words for each. */
  private static final int LONGEST_LINE = 4000;

  private final Offsets offsets;
  private final List<SyntaxProblem> problems;
  private final Strays strays;
  private final LineShapes shapes = new LineShapes();
  private final AtomShapes atoms = new AtomShapes();

  LineBuilder(Offsets offsets, List<SyntaxProblem> problems) {
    this.offsets = offsets;
    this.problems = problems;
    this.strays = new Strays(problems);
  }

  Line line(LineContext context) {
    Span span = span(context);
    if (span.length() > LONGEST_LINE) {
      problems.add(new SyntaxProblem(
          new Span(span.start(), span.start() + LONGEST_LINE),
          "a line has at most " + LONGEST_LINE + " characters; this one is left out"));
      return new Line.UnreadableLine(List.of(), List.of(), span);
    }
    Line line = shapes.visit(context);
    return line == null ? unreadable(context, List.of(), List.of()) : line;
  }

  private final class LineShapes extends KettleParserBaseVisitor<@Nullable Line> {

    @Override
    public Line visitSectionLine(SectionLineContext line) {
      Token word = line.keyword.getStart();
      SectionWord keyword = SectionWord.of(word.getText()).orElseThrow();
      return new Line.SectionLine(
          keyword, offsets.of(word), groups(line.objects), clauses(line.clauses), span(line));
    }

    @Override
    public Line visitAmountLine(AmountLineContext line) {
      return new Line.AmountLine(
          quantity(line.measure), groups(line.objects), clauses(line.clauses), span(line));
    }

    @Override
    public Line visitSufficientLine(SufficientLineContext line) {
      return new Line.SufficientLine(
          offsets.of(line.measure), groups(line.objects), clauses(line.clauses), span(line));
    }

    @Override
    public Line visitTakeAllLine(TakeAllLineContext line) {
      return new Line.TakeLine(
          Optional.empty(), optionalWord(line.source), clauses(line.clauses), span(line));
    }

    @Override
    public Line visitTakePartLine(TakePartLineContext line) {
      return new Line.TakeLine(
          Optional.ofNullable(line.share)
              .filter(LineBuilder::isFigure)
              .map(LineBuilder.this::quantity),
          optionalWord(line.source),
          clauses(line.clauses),
          span(line));
    }

    @Override
    public Line visitDefinitionLine(DefinitionLineContext line) {
      List<Line.Member> members = new ArrayList<>();
      for (MemberContext member : line.members) {
        if (member.name != null) {
          members.add(new Line.Member(word(member.name), optionalWord(member.place)));
        }
      }
      return new Line.DefinitionLine(
          word(line.head), word(line.name), List.copyOf(members), span(line));
    }

    @Override
    public Line visitStatementLine(StatementLineContext line) {
      return new Line.StatementLine(
          word(line.head), groups(line.objects), clauses(line.clauses), span(line));
    }

    @Override
    public Line visitHeadlessLine(HeadlessLineContext line) {
      problems.add(new SyntaxProblem(
          offsets.of(line.getStart()),
          "a line starts with an amount, a step or a fact, not with "
              + Excerpt.of(line.getStart().getText())));
      return unreadable(line, List.of(), clauses(line.clauses));
    }

    @Override
    public Line visitLooseLine(LooseLineContext line) {
      Atom first = atoms.visit(line.first);
      if (first != null && !(first instanceof Atom.StrayAtom)) {
        problems.add(
            new SyntaxProblem(first.span(), "a line starts with an amount, a step or a fact"));
      }
      return unreadable(line, groups(line.objects), clauses(line.clauses));
    }

    @Override
    public Line visitEmptyLine(EmptyLineContext line) {
      return new Line.EmptyLine(Span.at(offsets.of(line.getStart()).start()));
    }
  }

  private final class AtomShapes extends KettleParserBaseVisitor<@Nullable Atom> {

    @Override
    public Atom visitQuantity(QuantityContext atom) {
      return quantity(atom);
    }

    @Override
    public Atom visitNameAtom(NameAtomContext atom) {
      return new Atom.NameAtom(atom.name.getText(), offsets.of(atom.name));
    }

    @Override
    public Atom visitTextAtom(TextAtomContext atom) {
      String written = atom.text.getText();
      boolean closed = written.length() > 1 && written.endsWith("\"");
      Span span = offsets.of(atom.text);
      if (!closed) {
        problems.add(
            new SyntaxProblem(span, "the quote is not closed; it ends with `\"` on the same line"));
      }
      String text = written.substring(1, closed ? written.length() - 1 : written.length());
      return new Atom.TextAtom(text, closed, span);
    }

    @Override
    public Atom visitDateAtom(DateAtomContext atom) {
      Span span = offsets.of(atom.date);
      Optional<LocalDate> date = date(atom.date.getText());
      if (date.isEmpty()) {
        problems.add(new SyntaxProblem(span, "the calendar has no day " + atom.date.getText()));
      }
      return new Atom.DateAtom(date, span);
    }

    @Override
    public Atom visitRateAtom(RateAtomContext atom) {
      return atom.unit == null
          ? new Atom.ReservedAtom(atom.getStart().getText(), offsets.of(atom.getStart()))
          : new Atom.RateAtom(atom.unit.getText(), span(atom));
    }

    @Override
    public Atom visitReservedAtom(ReservedAtomContext atom) {
      return new Atom.ReservedAtom(atom.word.getText(), offsets.of(atom.word));
    }

    @Override
    public Atom visitSectionWordAtom(SectionWordAtomContext atom) {
      return new Atom.ReservedAtom(atom.word.getText(), offsets.of(atom.word));
    }

    @Override
    public Atom visitStrayAtom(StrayAtomContext atom) {
      Span span = offsets.of(atom.stray);
      strays.add(span, atom.stray.getText());
      return new Atom.StrayAtom(atom.stray.getText(), span);
    }
  }

  private Line unreadable(ParserRuleContext line, List<Group> objects, List<Clause> clauses) {
    return new Line.UnreadableLine(objects, clauses, span(line));
  }

  private List<Clause> clauses(List<ClauseContext> contexts) {
    List<Clause> clauses = new ArrayList<>();
    for (ClauseContext clause : contexts) {
      Token word = clause.word.getStart();
      clauses.add(
          new Clause(Connective.ofWord(word.getText()), offsets.of(word), groups(clause.objects)));
    }
    return clauses;
  }

  private List<Group> groups(@Nullable ListContext list) {
    List<Group> groups = new ArrayList<>();
    if (list != null) {
      for (GroupContext group : list.groups) {
        List<Atom> members = new ArrayList<>();
        for (AtomContext atom : group.atoms) {
          Atom shaped = atoms.visit(atom);
          if (shaped != null) {
            members.add(shaped);
          }
        }
        if (!members.isEmpty()) {
          groups.add(new Group(members));
        }
      }
    }
    return groups;
  }

  private Atom.QuantityAtom quantity(QuantityContext context) {
    Optional<Word> unit = optionalWord(context.unit);
    Optional<BigFraction> tolerance = Optional.ofNullable(context.tolerance())
        .flatMap(part -> Optional.ofNullable(part.number))
        .flatMap(number -> Figures.number(number.getText()));
    String number = context.number.getText();
    Optional<Quantity> quantity = Figures.quantity(number, unit.map(Word::text), tolerance);
    Optional<String> complaint = quantity.flatMap(q -> Figures.complaint(number, q));
    complaint.ifPresent(
        message -> problems.add(new SyntaxProblem(offsets.of(context.number), message)));
    if (complaint.isPresent()) {
      quantity = Optional.empty();
    }
    return new Atom.QuantityAtom(number, offsets.of(context.number), unit, quantity, span(context));
  }

  /** Recovery may leave a quantity whose first word is no figure. */
  private static boolean isFigure(QuantityContext context) {
    int type = context.number == null ? Token.INVALID_TYPE : context.number.getType();
    return type == KettleParser.NUMBER
        || type == KettleParser.RANGE
        || type == KettleParser.FRACTION;
  }

  private Word word(Token token) {
    return new Word(token.getText(), offsets.of(token));
  }

  private Optional<Word> optionalWord(@Nullable Token token) {
    return Optional.ofNullable(token).map(this::word);
  }

  private Span span(ParserRuleContext context) {
    Token stop = context.getStop();
    Span start = offsets.of(context.getStart());
    if (stop == null || stop.getStopIndex() < context.getStart().getStartIndex()) {
      return Span.at(start.start());
    }
    return start.to(offsets.of(stop));
  }

  private static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }
}
