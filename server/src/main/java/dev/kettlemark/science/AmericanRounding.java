package dev.kettlemark.science;

/**
 * Writes the figures of an American nutrition label.
 *
 * <p>Range: amounts per serving, not negative.
 *
 * <p>Source: U.S. Food and Drug Administration, Food Labeling Guide, appendix H, rounding rules after 21 CFR 101.9(c).
 */
public enum AmericanRounding {
  /** Energy in kcal. */
  CALORIES {
    @Override
    String rounded(double amount) {
      return amount < 5 ? "0" : Steps.round(amount, amount <= 50 ? "5" : "10");
    }
  },
  /** Total, saturated and trans fat in g. */
  FAT {
    @Override
    String rounded(double amount) {
      return amount < 0.5 ? "0" : Steps.round(amount, amount < 5 ? "0.5" : "1");
    }
  },
  /** Cholesterol in mg. */
  CHOLESTEROL {
    @Override
    String rounded(double amount) {
      if (amount < 2) {
        return "0";
      }
      return amount <= 5 ? "less than 5" : Steps.round(amount, "5");
    }
  },
  /** Sodium and potassium in mg. */
  SODIUM {
    @Override
    String rounded(double amount) {
      return amount < 5 ? "0" : Steps.round(amount, amount <= 140 ? "5" : "10");
    }
  },
  /** Carbohydrate, fibre, sugars and protein in g. */
  CARBOHYDRATE_OR_PROTEIN {
    @Override
    String rounded(double amount) {
      if (amount < 0.5) {
        return "0";
      }
      return amount < 1 ? "less than 1" : Steps.round(amount, "1");
    }
  };

  /**
   * Returns the figure as the label may print it, without its unit.
   *
   * @throws IllegalArgumentException if the amount is negative or not finite
   */
  public String of(double amount) {
    if (!(amount >= 0 && Double.isFinite(amount))) {
      throw new IllegalArgumentException("a label states no amount of " + amount);
    }
    return rounded(amount);
  }

  abstract String rounded(double amount);
}
