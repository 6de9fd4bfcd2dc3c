package dev.kettlemark.sheets;

import java.util.Locale;

/**
 * What of a formula's text something on a sheet speaks of, so that a page can follow the text.
 *
 * @param formula the name of the formula
 * @param stage the index of its stage
 * @param index which of them within the stage; 0 for the stage itself
 */
public record Mark(String formula, Kind kind, int stage, int index) {

  /** What is spoken of. */
  public enum Kind {
    /** The stage, where its weights are told. */
    WEIGHED,
    AMOUNT,
    TAKE,
    /** The stage, where its steps are told. */
    STAGE,
    STEP
  }

  /** The id of its element on the page. */
  public String id() {
    return formula + "--" + kind.name().toLowerCase(Locale.ROOT) + "-" + stage + "-" + index;
  }
}
