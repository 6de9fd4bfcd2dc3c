package dev.kettlemark.scaling;

import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** What a batch is wanted for; weights in grams, shares as fractions of one, all exact. */
public sealed interface Target {

  /** So much weighed in. */
  record Charge(BigFraction grams) implements Target {}

  /** So much left after cook-off and handling loss. */
  record Finished(BigFraction grams, BigFraction loss) implements Target {}

  /** So many pieces of one weight. */
  record Pieces(BigFraction count, BigFraction pieceGrams, BigFraction loss) implements Target {}

  /** So many moulds filled; what a cavity holds follows from the density of the mass. */
  record Moulds(String mould, int count, BigFraction loss) implements Target {}

  /** So many frames filled. */
  record Frames(String frame, int count, BigFraction loss) implements Target {}

  /** As much as a bowl can whip. */
  record BowlLimit(String bowl) implements Target {}

  /** As much as there is of one ingredient. */
  record InHand(String ingredient, BigFraction grams) implements Target {}

  /** The share lost in handling, where the target counts what is left. */
  default Optional<BigFraction> lossShare() {
    if (this instanceof Finished finished) {
      return Optional.of(finished.loss());
    }
    if (this instanceof Pieces pieces) {
      return Optional.of(pieces.loss());
    }
    if (this instanceof Moulds moulds) {
      return Optional.of(moulds.loss());
    }
    return this instanceof Frames frames ? Optional.of(frames.loss()) : Optional.empty();
  }
}
