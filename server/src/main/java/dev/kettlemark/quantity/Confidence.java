package dev.kettlemark.quantity;

/** How far a number may be trusted, best first. */
public enum Confidence {
  /** Follows from a definition or a mass balance. */
  EXACT,
  /** Follows from an international standard or from law. */
  STANDARD,
  /** Comes from a fitted equation with a stated error. */
  MODEL,
  /** Is common practice in the trade; the error is not known. */
  RULE_OF_THUMB,
  /** Was written or measured by the user. */
  GIVEN
}
