package dev.kettlemark.model;

import java.util.Optional;

/** What one section declares. */
public sealed interface Declaration
    permits House, Ingredient, Formula, Variant, Product, Trial, Sheet {

  Located<String> name();

  /** The display name behind the name, without quotes. */
  Optional<String> title();

  /** The display name, or the name where none was given. */
  default String shownName() {
    return title().orElse(name().value());
  }
}
