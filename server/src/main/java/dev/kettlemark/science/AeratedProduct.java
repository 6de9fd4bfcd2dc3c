package dev.kettlemark.science;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;

/**
 * How light the trade usually makes an aerated product.
 *
 * <p>Source: common practice, no source, except whipped nougat: N. R. Decker and G. R. Ziegler (2003), J. Food Sci.
 */
public enum AeratedProduct {
  EGG_WHITE_FOAM(0.10, 0.17),
  MERINGUE_WET(0.25, 0.45),
  MERINGUE_DRIED(0.15, 0.30),
  FRAPPE(0.40, 0.60),
  MARSHMALLOW_EXTRUDED(0.25, 0.35),
  MARSHMALLOW_DEPOSITED(0.35, 0.50),
  MARSHMALLOW_GRAINED(0.50, 0.70),
  NOUGAT_WHIPPED(0.66, 1.12),
  NOUGAT_WITH_NUTS(0.90, 1.20),
  AERATED_CHEW(1.10, 1.25),
  MOUSSE(0.40, 0.60);

  private final double lowGramsPerMillilitre;
  private final double highGramsPerMillilitre;

  AeratedProduct(double lowGramsPerMillilitre, double highGramsPerMillilitre) {
    this.lowGramsPerMillilitre = lowGramsPerMillilitre;
    this.highGramsPerMillilitre = highGramsPerMillilitre;
  }

  /** Returns the usual density. */
  public Band<Density> density() {
    return new Band<>(
        Density.ofGramsPerMillilitre(lowGramsPerMillilitre),
        Density.ofGramsPerMillilitre(highGramsPerMillilitre));
  }
}
