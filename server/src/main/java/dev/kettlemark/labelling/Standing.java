package dev.kettlemark.labelling;

/** Whether something may be said. */
public enum Standing {
  HOLDS,
  BROKEN,
  /** Somebody has not said what decides. */
  UNKNOWN
}
