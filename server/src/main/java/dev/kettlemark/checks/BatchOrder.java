package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.PieceOrder;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * A batch and the pieces that it is to make.
 *
 * @param batch the charge as written, in grams
 * @param order the pieces
 * @param cooked what the batch leaves before the handling loss, in grams
 * @param slack by how much that may be off, in grams
 */
record BatchOrder(Located<BigFraction> batch, PieceOrder order, double cooked, double slack) {

  /** Less than this share of the charge boils away from no formula that cooks. */
  private static final double NOTHING_BOILS = 0.005;

  /** The batch and the order of a formula that has both and whose yield is known. */
  static Optional<BatchOrder> of(ComputedFormula formula) {
    Optional<Located<BigFraction>> batch = formula.formula().batch();
    Optional<PieceOrder> order = PieceOrder.of(formula.formula().facts());
    if (batch.isEmpty() || order.isEmpty()) {
      return Optional.empty();
    }
    return formula
        .process()
        .cooked()
        .toOptional()
        .filter(cooked -> cooked.mass().grams() > 0)
        .map(cooked -> new BatchOrder(
            batch.get(), order.get(), cooked.mass().grams(), cooked.slack().grams()));
  }

  /** Whether the batch is the finished weight of the order, although the charge boils down. */
  boolean takesChargeForFinished() {
    return order.isNearly(batch.value())
        && cooked < (1 - NOTHING_BOILS) * batch.value().doubleValue();
  }

  /** What must be there before the handling loss, in grams. */
  double needed() {
    return order.gramsBeforeLoss().doubleValue();
  }

  /** Sets the batch to the charge that leaves enough, rounded up to a tenth of a gram. */
  List<Fix> enough(Subject subject) {
    double charge = batch.value().doubleValue() * needed() / cooked;
    String figure = Display.trimmed(Math.ceil(charge * 10) / 10, 1) + " g";
    return subject.isWrittenHere(batch.span())
        ? List.of(Fix.replace("Set the batch to " + figure, batch.span(), figure))
        : List.of();
  }
}
