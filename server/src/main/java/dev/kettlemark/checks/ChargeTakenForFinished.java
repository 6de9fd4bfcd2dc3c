package dev.kettlemark.checks;

import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import java.util.List;

/**
 * Reports a batch that was set to the finished weight of an order, although water boils away.
 *
 * <p>The batch is what is weighed in. The boil takes its share first, and the last pieces are missing.
 */
public final class ChargeTakenForFinished implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "charge-taken-for-finished", "the batch is the finished weight, but water boils away");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().flatMap(BatchOrder::of).stream()
        .filter(BatchOrder::takesChargeForFinished)
        .map(batch -> finding(subject, batch))
        .toList();
  }

  private static Finding finding(Subject subject, BatchOrder batch) {
    double afterLoss = batch.cooked() * (1 - batch.order().loss().doubleValue());
    double pieces = Math.floor(afterLoss / batch.order().gramsEach().doubleValue());
    return INFO.at(
            batch.batch().span(),
            "the batch is the finished weight, but only %s of it is left after the boil",
            Display.mass(Mass.ofGrams(batch.cooked())))
        .because("that makes " + Display.fixed(pieces, 0) + " pieces, not "
            + Display.trimmed(batch.order().pieces().doubleValue(), 1))
        .withRelated(subject.entry().origin(batch.order().span()), "the pieces wanted")
        .withFixes(batch.enough(subject));
  }
}
