package dev.kettlemark.sheets;

import dev.kettlemark.model.Unit;
import java.util.ArrayList;
import java.util.List;

/** A volume in US cups and spoons, as near as those can tell. */
final class CustomaryVolume {

  private static final String[] QUARTERS = {"", "¼", "½", "¾"};

  private static final double TEASPOON = Unit.TEASPOON.factor().doubleValue();
  private static final double TABLESPOON = Unit.TABLESPOON.factor().doubleValue();
  private static final double CUP = Unit.CUP.factor().doubleValue();

  private CustomaryVolume() {}

  /** Quarter teaspoons below a tablespoon, half tablespoons below a quarter cup, then cups and tablespoons. */
  static String of(double millilitres, Wording wording) {
    if (millilitres < TEASPOON / 8) {
      return wording.text("volume.pinch");
    }
    if (millilitres < TABLESPOON) {
      return about(quarters(Math.max(1, Math.rint(4 * millilitres / TEASPOON))), "tsp", wording);
    }
    if (millilitres < CUP / 4) {
      return about(quarters(2 * Math.rint(2 * millilitres / TABLESPOON)), "tbsp", wording);
    }
    double quarterCups = Math.floor(4 * millilitres / CUP + 1e-6);
    double halfSpoons = Math.rint(2 * (millilitres - quarterCups * CUP / 4) / TABLESPOON);
    if (halfSpoons >= 8) {
      quarterCups++;
      halfSpoons = 0;
    }
    List<String> parts = new ArrayList<>();
    parts.add(quarters(quarterCups) + FigureText.THIN + unit("cup", quarterCups > 4, wording));
    if (halfSpoons > 0) {
      parts.add(quarters(2 * halfSpoons) + FigureText.THIN + unit("tbsp", false, wording));
    }
    return "≈ " + String.join(" + ", parts);
  }

  private static String about(String number, String unit, Wording wording) {
    return "≈ " + number + FigureText.THIN + unit(unit, false, wording);
  }

  private static String unit(String word, boolean isMany, Wording wording) {
    return wording.text("volume." + word + (isMany ? ".many" : ""));
  }

  private static String quarters(double quarters) {
    long whole = (long) quarters / 4;
    String part = QUARTERS[(int) ((long) quarters % 4)];
    return whole == 0 ? part : part.isEmpty() ? Long.toString(whole) : whole + part;
  }
}
