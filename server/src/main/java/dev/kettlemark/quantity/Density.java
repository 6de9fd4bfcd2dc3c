package dev.kettlemark.quantity;

/**
 * Mass per volume, held in kilograms per cubic metre.
 *
 * @param kilogramsPerCubicMetre the density in kg/m³; finite and above zero
 */
public record Density(double kilogramsPerCubicMetre) implements Comparable<Density> {

  /** 1 g/mL is 1000 kg/m³. */
  private static final double PER_GRAM_PER_MILLILITRE = 1000;

  public Density {
    kilogramsPerCubicMetre = Finite.positive(kilogramsPerCubicMetre, "a density");
  }

  public static Density ofKilogramsPerCubicMetre(double kilogramsPerCubicMetre) {
    return new Density(kilogramsPerCubicMetre);
  }

  public static Density ofGramsPerMillilitre(double gramsPerMillilitre) {
    return new Density(gramsPerMillilitre * PER_GRAM_PER_MILLILITRE);
  }

  public double gramsPerMillilitre() {
    return kilogramsPerCubicMetre / PER_GRAM_PER_MILLILITRE;
  }

  @Override
  public int compareTo(Density other) {
    return Double.compare(kilogramsPerCubicMetre, other.kilogramsPerCubicMetre);
  }
}
