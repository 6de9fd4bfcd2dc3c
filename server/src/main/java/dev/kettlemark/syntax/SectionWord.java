package dev.kettlemark.syntax;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The words that open a section, or, for {@code stage}, a part of one. */
public enum SectionWord {
  HOUSE,
  INGREDIENT,
  FORMULA,
  VARIANT,
  PRODUCT,
  STAGE,
  TRIAL,
  SHEET;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether the word starts a section of its own; a stage belongs to the section above it. */
  public boolean opensSection() {
    return this != STAGE;
  }

  public static Optional<SectionWord> of(String word) {
    return Arrays.stream(values()).filter(value -> value.word().equals(word)).findFirst();
  }
}
