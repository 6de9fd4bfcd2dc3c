package dev.kettlemark.syntax;

import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * One line of a section by its shape.
 *
 * <p>A line's span covers what is written, without surrounding space and comment.
 */
public sealed interface Line {

  Span span();

  default List<Group> objects() {
    return List.of();
  }

  default List<Clause> clauses() {
    return List.of();
  }

  /** {@code formula NAME "Title" …}, and likewise for every section word and {@code stage}. */
  record SectionLine(
      SectionWord keyword, Span keywordSpan, List<Group> objects, List<Clause> clauses, Span span)
      implements Line {}

  /** {@code 36.00 % white-sugar at 60 °C}. */
  record AmountLine(Atom.QuantityAtom measure, List<Group> objects, List<Clause> clauses, Span span)
      implements Line {}

  /** {@code q.s. water}: as much as suffices. */
  record SufficientLine(Span measure, List<Group> objects, List<Clause> clauses, Span span)
      implements Line {}

  /** {@code all of foam} or {@code part 1/2 of foam}; without a share it takes all. */
  record TakeLine(
      Optional<Atom.QuantityAtom> share, Optional<Word> source, List<Clause> clauses, Span span)
      implements Line {}

  /** {@code basis liquid = water in foam, orange-blossom-water}. */
  record DefinitionLine(Word head, Word name, List<Member> members, Span span) implements Line {}

  /** A name in a definition, if need be with the stage it stands in. */
  record Member(Word name, Optional<Word> place) {}

  /** A fact or a step: a word, its objects, its clauses. */
  record StatementLine(Word head, List<Group> objects, List<Clause> clauses, Span span)
      implements Line {}

  /** A line that starts with something that no line starts with. */
  record UnreadableLine(List<Group> objects, List<Clause> clauses, Span span) implements Line {}

  /** Nothing, or only a comment. */
  record EmptyLine(Span span) implements Line {}
}
