package dev.kettlemark.features;

import dev.kettlemark.text.Span;

/**
 * Something to write at a place.
 *
 * @param label what is shown, and what the typed letters are compared with
 * @param detail a few words beside the label; possibly empty
 * @param documentation what helps to choose, in Markdown; possibly empty
 * @param insertText what is written
 * @param isSnippet whether the text holds places to fill in, such as <code>${1:name}</code>
 * @param replaced the word under the cursor
 * @param kind what the label is
 * @param sortKey orders proposals as text
 * @param isPast whether it is no longer sold or made
 */
public record Proposal(
    String label,
    String detail,
    String documentation,
    String insertText,
    boolean isSnippet,
    Span replaced,
    Kind kind,
    String sortKey,
    boolean isPast) {

  /** What is proposed. */
  public enum Kind {
    INGREDIENT,
    FORMULA,
    PRODUCT,
    HOUSE,
    STAGE,
    TOOL,
    BASIS,
    VERB,
    FACT,
    STATE,
    TEMPERATURE,
    UNIT,
    /** A small word that opens an amount or a clause. */
    CONNECTIVE,
    /** A word of a list, such as a claim. */
    WORD,
    /** A whole section to fill in. */
    SKELETON
  }
}
