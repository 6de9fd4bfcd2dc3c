package dev.kettlemark.model;

import java.time.LocalDate;

/** What a fact or a clause of a step speaks of. */
public sealed interface Operand {

  /** A figure with its unit. */
  record Figure(Quantity quantity) implements Operand {}

  /** A plain word: a name, a state, a speed. */
  record Name(String word) implements Operand {}

  /** A quoted text. */
  record Text(String text) implements Operand {}

  /** A rate such as {@code per kg}. */
  record Rate(Unit unit) implements Operand {}

  /** A date. */
  record Day(LocalDate date) implements Operand {}
}
