package dev.kettlemark.sheets;

import java.util.Locale;

/** In what a figure of a sheet is held; a renderer may show it in others. */
public enum SheetUnit {
  GRAM("g"),
  PERCENT("%"),
  CELSIUS("°C"),
  SECOND("s"),
  PIECE("pieces"),
  MILLILITRE("mL"),
  GRAM_PER_SECOND("g/s"),
  METRE("m"),
  MILLIMETRE("mm"),
  GRAM_PER_MILLILITRE("g/mL"),
  RELATIVE_HUMIDITY("%RH"),
  WATER_ACTIVITY("aw"),
  PH("pH"),
  MILLIGRAM("mg"),
  KILOJOULE("kJ"),
  KILOCALORIE("kcal"),
  PRICE("price"),
  /** A difference of percentages. */
  POINT("points"),
  /** A difference of temperatures. */
  DEGREE("K"),
  NUMBER("");

  private final String symbol;

  SheetUnit(String symbol) {
    this.symbol = symbol;
  }

  /** The unit as the language of the formulas writes it. */
  public String symbol() {
    return symbol;
  }

  String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
