package dev.kettlemark.science;

import dev.kettlemark.quantity.Ratio;

/** How likely sucrose crystals form, by supersaturation; limits are common practice of the sugar factory, no source. */
public enum GrainingRisk {
  /** Crystals dissolve. */
  STABLE(0),
  /** Crystals grow, but no new ones form. */
  METASTABLE(1.0),
  /** New crystals form beside old ones. */
  INTERMEDIATE(1.2),
  /** Crystals form on their own; only viscosity or doctor sugars hold them back. */
  LABILE(1.3);

  private final double from;

  GrainingRisk(double from) {
    this.from = from;
  }

  /** Returns the zone in which a supersaturation lies. */
  public static GrainingRisk of(Ratio supersaturation) {
    GrainingRisk found = STABLE;
    for (GrainingRisk risk : values()) {
      if (supersaturation.fraction() >= risk.from) {
        found = risk;
      }
    }
    return found;
  }
}
