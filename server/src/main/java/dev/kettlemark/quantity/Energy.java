package dev.kettlemark.quantity;

/**
 * An amount of heat, held in joules.
 *
 * @param joules the energy in J; finite, of either sign
 */
public record Energy(double joules) implements Comparable<Energy> {

  /** No energy at all. */
  public static final Energy ZERO = new Energy(0);

  private static final double JOULES_PER_KILOJOULE = 1000;

  public Energy {
    joules = Finite.number(joules, "an energy");
  }

  public static Energy ofJoules(double joules) {
    return new Energy(joules);
  }

  public static Energy ofKilojoules(double kilojoules) {
    return new Energy(kilojoules * JOULES_PER_KILOJOULE);
  }

  public double kilojoules() {
    return joules / JOULES_PER_KILOJOULE;
  }

  public Energy plus(Energy other) {
    return new Energy(joules + other.joules);
  }

  public Energy minus(Energy other) {
    return new Energy(joules - other.joules);
  }

  public Energy times(double factor) {
    return new Energy(joules * factor);
  }

  @Override
  public int compareTo(Energy other) {
    return Double.compare(joules, other.joules);
  }
}
