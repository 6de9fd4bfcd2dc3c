package dev.kettlemark.cards;

import dev.kettlemark.sheets.SheetFigure;

/**
 * One figure of two formulas.
 *
 * @param word what it is a figure of
 */
public record Pair(String word, SheetFigure first, SheetFigure second) {

  public Difference difference() {
    return Difference.of(first, second);
  }

  /** Whether anything is known of it. */
  boolean isKnown() {
    return first.reach().isKnown() || second.reach().isKnown();
  }
}
