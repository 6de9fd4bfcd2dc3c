package dev.kettlemark.cards;

import dev.kettlemark.model.Ingredient;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a material does in a formula, the rarest duty first: what whips is not exchanged for a filler, though
 * both may be called a protein.
 */
public enum Function {
  WHIPPING,
  GELLING,
  THICKENING,
  EMULSIFIER,
  LEAVENING,
  ACIDULANT,
  MINERAL,
  COATING,
  WAFER,
  NUT,
  SEED,
  FRUIT,
  DOCTOR,
  SWEETENING,
  HUMECTANT,
  DAIRY,
  FAT,
  STARCH,
  PROTEIN,
  BULKING,
  SALT,
  COLOUR,
  FLAVOUR,
  ALCOHOL,
  DUSTING,
  INCLUSION,
  WATER;

  /** The word of the language, as a role of an ingredient. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** All that an ingredient does. */
  static List<Function> of(Ingredient ingredient) {
    return Stream.of(values()).filter(one -> ingredient.hasRole(one.word())).toList();
  }

  /** What it is there for above all. */
  static Optional<Function> first(Optional<Ingredient> ingredient) {
    return ingredient.flatMap(one -> of(one).stream().findFirst());
  }

  /** The first duty that two share, in the order of how rare it is. */
  static Optional<Function> shared(Ingredient one, Ingredient other) {
    return Arrays.stream(values())
        .filter(duty -> one.hasRole(duty.word()) && other.hasRole(duty.word()))
        .findFirst();
  }
}
