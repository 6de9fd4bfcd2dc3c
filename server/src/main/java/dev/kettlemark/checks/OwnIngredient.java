package dev.kettlemark.checks;

import dev.kettlemark.library.Pantry;
import dev.kettlemark.model.Ingredient;
import java.util.Optional;

/** An ingredient that the house describes itself. */
final class OwnIngredient {

  private OwnIngredient() {}

  /** Empty for other sections, and for the built-in pantry, which nobody can mend. */
  static Optional<Ingredient> of(Subject subject) {
    return subject.entry().uri().startsWith(Pantry.SCHEME)
        ? Optional.empty()
        : subject
            .declaration()
            .flatMap(d -> d instanceof Ingredient own ? Optional.of(own) : Optional.empty());
  }
}
