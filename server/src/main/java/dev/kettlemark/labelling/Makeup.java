package dev.kettlemark.labelling;

import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import java.util.List;
import java.util.Optional;

/**
 * What a formula or product is made of, down to the pantry.
 *
 * <p>Two makeups are the same only if they are one object.
 */
public final class Makeup {

  private final List<IngredientUse> uses;
  private final Outcome<Composition> composition;
  private final Optional<Mass> piece;

  Makeup(List<IngredientUse> uses, Outcome<Composition> composition, Optional<Mass> piece) {
    this.uses = List.copyOf(uses);
    this.composition = composition;
    this.piece = piece;
  }

  /** Every ingredient once, the heaviest as used first. */
  public List<IngredientUse> uses() {
    return uses;
  }

  /** What the finished mass is made of, after the model has boiled off what leaves. */
  public Outcome<Composition> composition() {
    return composition;
  }

  /** What one finished piece weighs, where that is said. */
  public Optional<Mass> piece() {
    return piece;
  }
}
