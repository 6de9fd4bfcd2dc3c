package dev.kettlemark.features;

import java.util.List;

/** What is told of a coloured word besides its type. */
public enum TokenModifier {
  /** A name where it is given. */
  DECLARATION("declaration"),
  /** A name that the whole library knows, where it is given. */
  DEFINITION("definition"),
  /** An ingredient, whose composition no formula changes. */
  READONLY("readonly"),
  /** What is no longer sold, or no longer to be made. */
  DEPRECATED("deprecated"),
  /** What comes with the program: pantry entries, verbs, the words of its lists. */
  DEFAULT_LIBRARY("defaultLibrary"),
  /** A heat, in number and unit; no word of the standard legend, so themes that do not know it pass over it. */
  TEMPERATURE("temperature");

  /** All modifiers in the order in which a client is told them. */
  public static final List<TokenModifier> LEGEND = List.of(values());

  private final String word;

  TokenModifier(String word) {
    this.word = word;
  }

  /** The name of the modifier in the legend. */
  public String word() {
    return word;
  }
}
