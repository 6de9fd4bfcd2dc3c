package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.util.List;

/** A connective and what it says of a fact or a step, such as {@code to 143 °C} or {@code while whisking}. */
public record StatementClause(Connective word, List<Located<Operand>> operands, Span span) {

  public StatementClause {
    operands = List.copyOf(operands);
  }

  StatementClause relocated(Span place) {
    return new StatementClause(word, operands.stream().map(o -> o.at(place)).toList(), place);
  }
}
