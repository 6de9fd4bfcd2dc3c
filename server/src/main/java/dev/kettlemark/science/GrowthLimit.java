package dev.kettlemark.science;

import dev.kettlemark.quantity.Ratio;
import java.util.Arrays;
import java.util.List;

/**
 * The water activity below which a group of microbes does not grow, hardiest last.
 *
 * <p>Source: L. R. Beuchat (1981), Cereal Foods World 26, 345, the table of least water activities.
 */
public enum GrowthLimit {
  MOST_BACTERIA("most bacteria", 0.91),
  MOST_YEASTS("most yeasts", 0.87),
  STAPHYLOCOCCUS("Staphylococcus aureus", 0.86),
  MOST_MOULDS("most moulds", 0.80),
  HALOPHILES("salt-loving bacteria", 0.75),
  DRY_MOULDS("moulds that tolerate dryness", 0.61),
  OSMOPHILIC_YEASTS("yeasts that tolerate sugar", 0.60);

  /** Below it nothing grows: the same table. */
  public static final Ratio NOTHING_GROWS = Ratio.ofFraction(0.60);

  /** The limit of shelf-stable food in United States law: 21 CFR 113.3(n) and 114.3. */
  public static final Ratio SHELF_STABLE = Ratio.ofFraction(0.85);

  private final String group;
  private final double least;

  GrowthLimit(String group, double least) {
    this.group = group;
    this.least = least;
  }

  /** Returns the groups that can grow at a water activity, hardiest last. */
  public static List<GrowthLimit> growingAt(Ratio activity) {
    return Arrays.stream(values())
        .filter(limit -> activity.fraction() >= limit.least)
        .toList();
  }

  public String group() {
    return group;
  }

  public Ratio leastActivity() {
    return Ratio.ofFraction(least);
  }
}
