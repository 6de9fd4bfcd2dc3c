package dev.kettlemark.scaling;

import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.List;

/**
 * A product with what one piece weighs and what all pieces need.
 *
 * @param product the product
 * @param parts what each part weighs in one piece, in order
 * @param pieceGrams what one finished piece weighs
 * @param needs what must be made or bought for all pieces; empty where no count is given
 */
public record ComputedProduct(
    Product product, List<PartWeight> parts, Outcome<Mass> pieceGrams, List<Need> needs) {

  public ComputedProduct {
    parts = List.copyOf(parts);
    needs = List.copyOf(needs);
  }

  /**
   * One part of a piece.
   *
   * @param ofFinished its share of the finished piece
   */
  public record PartWeight(Product.Part part, Outcome<Mass> mass, Outcome<Ratio> ofFinished) {}

  /**
   * What all pieces together need of one material.
   *
   * @param onPieces what stays on the pieces
   * @param withLoss what must be finished or bought, handling loss and spare included
   * @param scaling for a formula, the batch that gives it
   */
  public record Need(
      String role, String material, Mass onPieces, Mass withLoss, Outcome<Scaling> scaling) {}
}
