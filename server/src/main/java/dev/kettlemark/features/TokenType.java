package dev.kettlemark.features;

import java.util.List;
import java.util.Locale;

/**
 * What a word is coloured as, in the terms that every theme knows.
 *
 * <p>The kinds of things share the colours of their kin in programs: what is declared once and made of
 * others is a class, what a formula weighs in is a variable, what happens at the bench is a function.
 */
public enum TokenType {
  /** A word that opens a section or an amount. */
  KEYWORD,
  /** A formula, a variant, a product, a house, a trial, a sheet. */
  CLASS,
  /** A stage. */
  TYPE,
  /** An ingredient, and a tool of the house. */
  VARIABLE,
  /** What a percentage is of. */
  PARAMETER,
  /** A fact word. */
  PROPERTY,
  /** A verb. */
  FUNCTION,
  /** A word of a list: a state, a speed, a claim, a component. */
  ENUM_MEMBER,
  NUMBER,
  /** A unit, which says what a number is. */
  MODIFIER,
  STRING,
  COMMENT,
  /** A connective, and signs such as {@code ±}. */
  OPERATOR,
  /** The name of a rule in an acceptance. */
  DECORATOR;

  /** All types in the order in which a client is told them. */
  public static final List<TokenType> LEGEND = List.of(values());

  /** The name of the type in the standard legend. */
  public String word() {
    return this == ENUM_MEMBER ? "enumMember" : name().toLowerCase(Locale.ROOT);
  }
}
