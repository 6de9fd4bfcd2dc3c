package dev.kettlemark.science;

/**
 * The gel strength of a gelatine grade.
 *
 * <p>Measured on a gel of 6.67 % at 10 °C with a plunger of 12.7 mm pressed 4 mm deep.
 *
 * @param grams force in grams, 50 to 325
 */
public record Bloom(double grams) {

  /** No grade sold is weaker. */
  public static final double WEAKEST = 50;

  /** No grade sold is stronger. */
  public static final double STRONGEST = 325;

  public Bloom {
    if (!isGrade(grams)) {
      throw new IllegalArgumentException("a bloom must lie from 50 to 325 g, not at " + grams);
    }
  }

  /** Tells whether a figure may be a bloom at all. */
  public static boolean isGrade(double grams) {
    return grams >= WEAKEST && grams <= STRONGEST;
  }
}
