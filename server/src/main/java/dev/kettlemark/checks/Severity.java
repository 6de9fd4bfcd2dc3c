package dev.kettlemark.checks;

import java.util.Locale;

/**
 * How much a finding matters; the whole policy in one place.
 *
 * <p>A false error on a right formula is worse than a missed hint, so what is only likely is never an
 * error.
 */
public enum Severity {
  /** Cannot be right, or is dangerous: the formula has no meaning, or somebody gets hurt. */
  ERROR,
  /** Very likely wrong: a practitioner would stop and look. */
  WARNING,
  /** Worth knowing: right as it stands, with a consequence that is easily overlooked. */
  INFORMATION,
  /** A plainer or tidier form exists; always with a fix. */
  HINT;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
