package dev.kettlemark.checks;

import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import java.util.List;

/**
 * Reports an order that the batch does not yield.
 *
 * <p>What the boiling model may be off by counts in favour of the batch, so a right batch is never
 * reported.
 */
public final class TooFewGrams implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("too-few-grams", "the batch does not yield the pieces wanted");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().flatMap(BatchOrder::of).stream()
        .filter(batch -> !batch.takesChargeForFinished())
        .filter(batch -> batch.needed()
                * subject.threshold(Threshold.BATCH_SHORTFALL).complement().fraction()
            > batch.cooked() + batch.slack())
        .map(batch -> finding(subject, batch))
        .toList();
  }

  private static Finding finding(Subject subject, BatchOrder batch) {
    double afterLoss = batch.cooked() * (1 - batch.order().loss().doubleValue());
    return INFO.at(
            batch.order().span(),
            "the pieces weigh %s, but the batch yields %s",
            Display.mass(Mass.ofGrams(batch.order().grams().doubleValue())),
            Display.mass(Mass.ofGrams(afterLoss)))
        .because("the last pieces cannot be made")
        .withRelated(subject.entry().origin(batch.batch().span()), "the batch")
        .withFixes(batch.enough(subject));
  }
}
