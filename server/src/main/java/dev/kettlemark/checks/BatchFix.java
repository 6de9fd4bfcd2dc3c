package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.fraction.BigFraction;

/** Sets the batch of a formula. */
final class BatchFix {

  private BatchFix() {}

  /** Multiplies the batch and rounds it down to whole grams; nothing where it is not written here. */
  static Optional<Fix> smaller(Subject subject, ComputedFormula formula, double factor) {
    return times(subject, formula, grams -> Math.floor(grams * factor));
  }

  /** Multiplies the batch and rounds it up to whole grams; nothing where it is not written here. */
  static Optional<Fix> larger(Subject subject, ComputedFormula formula, double factor) {
    return times(subject, formula, grams -> Math.ceil(grams * factor));
  }

  private static Optional<Fix> times(
      Subject subject, ComputedFormula formula, DoubleUnaryOperator change) {
    Optional<Located<BigFraction>> batch =
        formula.formula().batch().filter(found -> subject.isWrittenHere(found.span()));
    return batch.map(found -> {
      String figure = Display.trimmed(change.applyAsDouble(found.value().doubleValue()), 0) + " g";
      return Fix.replace("Set the batch to " + figure, found.span(), figure);
    });
  }
}
