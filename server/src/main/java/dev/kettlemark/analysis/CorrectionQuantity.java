package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Display;

/** In what a kitchen may differ from the model, each with the unit of its figures. */
public enum CorrectionQuantity {
  /** Water by the mass balance less water by the boiling model, in percent points. */
  WATER_LEFT("water left", "points", 1, false, true),
  /** What the probe reads less where a mass of that weight boils, in °C: the same gap, seen from the other side. */
  PROBE("thermometer", "°C", 1, false, true),
  /** The share of the heat that bowl, whisk and air take when masses meet, in percent. */
  HEAT_TAKEN("bowl and air take", "%", 1, false, false),
  /** The measured temperature after masses met less the predicted one, in °C. */
  MIX_TEMPERATURE("mix temperature", "°C", 1, true, true),
  ACTIVITY("water activity", "aw", 3, false, true),
  /** Measured less predicted density, in g/mL. */
  DENSITY("density", "g/mL", 3, true, true),
  /** The air that the kitchen gets into a mass, by volume of the mass without air, in percent. */
  OVERRUN("overrun", "%", 0, true, false);

  private final String title;
  private final String unit;
  private final int decimals;
  private final boolean perFormula;
  private final boolean difference;

  CorrectionQuantity(
      String title, String unit, int decimals, boolean perFormula, boolean difference) {
    this.title = title;
    this.unit = unit;
    this.decimals = decimals;
    this.perFormula = perFormula;
    this.difference = difference;
  }

  public String title() {
    return title;
  }

  public String unit() {
    return unit;
  }

  /** Whether it says something of one formula only, and not of the whole kitchen. */
  public boolean isPerFormula() {
    return perFormula;
  }

  /** Whether it is added to a prediction; otherwise it stands for itself. */
  public boolean isDifference() {
    return difference;
  }

  /** A value with its unit, and its sign where it is added to something. */
  public String shown(double value) {
    String figure = Display.fixed(value, decimals);
    return (difference && value > 0 && Double.parseDouble(figure) != 0 ? "+" : "") + figure + " "
        + unit;
  }

  /** A spread or another figure without sign or unit. */
  public String figure(double value) {
    return Display.fixed(value, decimals);
  }
}
