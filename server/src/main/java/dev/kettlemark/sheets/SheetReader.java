package dev.kettlemark.sheets;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** For whom a sheet is made. */
public enum SheetReader {
  CHEF,
  HOME,
  PRODUCTION,
  /** A card for one batch, to be written on at the bench. */
  BENCH;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<SheetReader> of(String word) {
    return Arrays.stream(values()).filter(reader -> reader.word().equals(word)).findFirst();
  }
}
