package dev.kettlemark.quantity;

/** Why an answer is unknown. */
public enum Reason {
  /** An input lies outside the range in which the equation was ever measured. */
  OUTSIDE_VALID_RANGE,
  /** What the material is made of is not known well enough. */
  MISSING_COMPOSITION,
  /** A figure that the answer needs, such as a density or a weight, was never given. */
  MISSING_FIGURE,
  /** The equation was searched over its whole range and nothing satisfies it. */
  NO_SOLUTION,
  /** The project has no equation for this question. */
  NOT_MODELLED,
  /** Something that the answer rests on is itself unknown. */
  DEPENDS_ON_UNKNOWN,
  /** The inputs contradict each other. */
  CONTRADICTION
}
