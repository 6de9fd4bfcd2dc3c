package dev.kettlemark.syntax;

import dev.kettlemark.model.Connective;
import dev.kettlemark.text.Span;
import java.util.List;

/** A connective and what it introduces, possibly nothing. */
public record Clause(Connective word, Span wordSpan, List<Group> groups) {

  public Clause {
    groups = List.copyOf(groups);
  }

  public Span span() {
    return groups.isEmpty()
        ? wordSpan
        : wordSpan.to(groups.get(groups.size() - 1).span());
  }

  static List<Clause> shiftedBy(List<Clause> clauses, int distance) {
    return clauses.stream()
        .map(clause -> new Clause(
            clause.word,
            clause.wordSpan.shiftedBy(distance),
            Group.shiftedBy(clause.groups, distance)))
        .toList();
  }
}
