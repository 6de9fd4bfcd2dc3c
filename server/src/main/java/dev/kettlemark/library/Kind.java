package dev.kettlemark.library;

import dev.kettlemark.syntax.SectionWord;

/** The name spaces of a library: within one, a name means one thing. */
public enum Kind {
  /** Ingredients, formulas and variants: all that an amount can be of. */
  MATERIAL,
  HOUSE,
  PRODUCT,
  TRIAL,
  SHEET;

  /**
   * The name space of a section.
   *
   * @throws IllegalArgumentException for a stage, whose name holds in its formula only
   */
  public static Kind of(SectionWord word) {
    return switch (word) {
      case INGREDIENT, FORMULA, VARIANT -> MATERIAL;
      case HOUSE -> HOUSE;
      case PRODUCT -> PRODUCT;
      case TRIAL -> TRIAL;
      case SHEET -> SHEET;
      case STAGE -> throw new IllegalArgumentException("a stage is no declaration");
    };
  }
}
