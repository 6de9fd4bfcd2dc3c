package dev.kettlemark.analysis;

import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;

/** What is measured at the bench, each with the unit in which its figures are held and shown. */
public enum TrialQuantity {
  /** The temperature at which a stage was cooked to its end. */
  END("end", "°C", 1, 1),
  /** The temperature of a mass right after a step. */
  TEMPERATURE("temperature", "°C", 1, 1),
  WEIGHT("weight", "g", 1, 1),
  /** What is left of the whole formula after handling loss. */
  FINISHED("finished", "g", 1, 1),
  DENSITY("density", "g/mL", 1, 2),
  /** Air by volume of the mass without air. */
  OVERRUN("overrun", "%", 100, 0),
  ACTIVITY("aw", "aw", 1, 2),
  WATER("water", "%", 100, 1),
  SOLIDS("solids", "%", 100, 1),
  PIECES("pieces", "pieces", 1, 0),
  /** Something that no model speaks of. */
  OTHER("other", "", 1, 2);

  private final String word;
  private final String unit;
  private final double perBaseUnit;
  private final int decimals;

  TrialQuantity(String word, String unit, double perBaseUnit, int decimals) {
    this.word = word;
    this.unit = unit;
    this.perBaseUnit = perBaseUnit;
    this.decimals = decimals;
  }

  /** The word for it on a {@code measured} line. */
  public String word() {
    return word;
  }

  /** The unit of its figures, as the language writes it. */
  public String unit() {
    return unit;
  }

  /** A figure of the text in the unit of this quantity. */
  public double of(Quantity written) {
    return written.middleInBase().doubleValue() * perBaseUnit;
  }

  /** A figure with its unit. */
  public String shown(double value) {
    return (figure(value) + " " + unit).strip();
  }

  /** A figure without its unit. */
  public String figure(double value) {
    return Display.fixed(value, decimals);
  }

  /** A difference with its sign and unit. */
  public String difference(double value) {
    String figure = figure(value);
    String sign = value > 0 && Double.parseDouble(figure) != 0 ? "+" : "";
    return (sign + figure + " " + (unit.equals("%") ? "points" : unit)).strip();
  }

  /** What a bare figure of a dimension measures where the line does not say. */
  static TrialQuantity of(Unit.Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> TEMPERATURE;
      case MASS -> WEIGHT;
      case DENSITY -> DENSITY;
      case ACTIVITY -> ACTIVITY;
      case COUNT -> PIECES;
      default -> OTHER;
    };
  }
}
