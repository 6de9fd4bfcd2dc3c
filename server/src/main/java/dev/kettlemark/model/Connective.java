package dev.kettlemark.model;

import java.util.Locale;

/** The small words that open a clause. */
public enum Connective {
  OF,
  TO,
  UNTIL,
  FOR,
  OVER,
  AT,
  ABOVE,
  BELOW,
  WITHIN,
  INTO,
  IN,
  WITH,
  ON,
  BETWEEN,
  UNDER,
  WHILE,
  FROM,
  BY;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Connective ofWord(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}
