package dev.kettlemark.syntax;

import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * One line of a section by its shape.
 *
 * <p>A line's span covers what is written, without surrounding space and comment.
 */
public sealed interface Line extends Placed<Line> {

  default List<Group> objects() {
    return List.of();
  }

  default List<Clause> clauses() {
    return List.of();
  }

  /** {@code formula NAME "Title" …}, and likewise for every section word and {@code stage}. */
  record SectionLine(
      SectionWord keyword, Span keywordSpan, List<Group> objects, List<Clause> clauses, Span span)
      implements Line {

    @Override
    public Line shiftedBy(int distance) {
      return new SectionLine(
          keyword,
          keywordSpan.shiftedBy(distance),
          Group.shiftedBy(objects, distance),
          Clause.shiftedBy(clauses, distance),
          span.shiftedBy(distance));
    }
  }

  /** {@code 36.00 % white-sugar at 60 °C}. */
  record AmountLine(Atom.QuantityAtom measure, List<Group> objects, List<Clause> clauses, Span span)
      implements Line {

    @Override
    public Line shiftedBy(int distance) {
      return new AmountLine(
          measure.shiftedBy(distance),
          Group.shiftedBy(objects, distance),
          Clause.shiftedBy(clauses, distance),
          span.shiftedBy(distance));
    }
  }

  /** {@code q.s. water}: as much as suffices. */
  record SufficientLine(Span measure, List<Group> objects, List<Clause> clauses, Span span)
      implements Line {

    @Override
    public Line shiftedBy(int distance) {
      return new SufficientLine(
          measure.shiftedBy(distance),
          Group.shiftedBy(objects, distance),
          Clause.shiftedBy(clauses, distance),
          span.shiftedBy(distance));
    }
  }

  /** {@code all of foam} or {@code part 1/2 of foam}; without a share it takes all. */
  record TakeLine(
      Optional<Atom.QuantityAtom> share, Optional<Word> source, List<Clause> clauses, Span span)
      implements Line {

    @Override
    public Line shiftedBy(int distance) {
      return new TakeLine(
          share.map(part -> part.shiftedBy(distance)),
          source.map(word -> word.shiftedBy(distance)),
          Clause.shiftedBy(clauses, distance),
          span.shiftedBy(distance));
    }
  }

  /** {@code basis liquid = water in foam, orange-blossom-water}. */
  record DefinitionLine(Word head, Word name, List<Member> members, Span span) implements Line {

    @Override
    public Line shiftedBy(int distance) {
      return new DefinitionLine(
          head.shiftedBy(distance),
          name.shiftedBy(distance),
          members.stream().map(member -> member.shiftedBy(distance)).toList(),
          span.shiftedBy(distance));
    }
  }

  /** A name in a definition, if need be with the stage it stands in. */
  record Member(Word name, Optional<Word> place) {

    private Member shiftedBy(int distance) {
      return new Member(name.shiftedBy(distance), place.map(word -> word.shiftedBy(distance)));
    }
  }

  /** A fact or a step: a word, its objects, its clauses. */
  record StatementLine(Word head, List<Group> objects, List<Clause> clauses, Span span)
      implements Line {

    @Override
    public Line shiftedBy(int distance) {
      return new StatementLine(
          head.shiftedBy(distance),
          Group.shiftedBy(objects, distance),
          Clause.shiftedBy(clauses, distance),
          span.shiftedBy(distance));
    }
  }

  /** A line that starts with something that no line starts with. */
  record UnreadableLine(List<Group> objects, List<Clause> clauses, Span span) implements Line {

    @Override
    public Line shiftedBy(int distance) {
      return new UnreadableLine(
          Group.shiftedBy(objects, distance),
          Clause.shiftedBy(clauses, distance),
          span.shiftedBy(distance));
    }
  }

  /** Nothing, or only a comment. */
  record EmptyLine(Span span) implements Line {

    @Override
    public Line shiftedBy(int distance) {
      return new EmptyLine(span.shiftedBy(distance));
    }
  }
}
