package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;

/** What is left after handling loss: what can be filled, cut and sold. */
public record FinishedWeight(Mass mass) {

  /** What must be cooked so that this is left after the loss. */
  public Mass beforeLoss(Ratio loss) {
    return mass.times(1 / loss.complement().fraction());
  }
}
