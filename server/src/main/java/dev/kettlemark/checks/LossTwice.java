package dev.kettlemark.checks;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.PieceOrder;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Excerpt;
import java.util.List;
import java.util.Optional;

/**
 * Tells of a handling loss that stands on a product and on the formula of its centre.
 *
 * <p>The product's is counted for the product, and the formula's for the formula's own order; whoever
 * takes the one for the other's supplement plans the loss twice.
 */
public final class LossTwice implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "loss-twice", "a product and the formula of its centre both state a handling loss");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .declaration()
        .flatMap(d -> d instanceof Product product ? Optional.of(product) : Optional.empty())
        .flatMap(product -> check(subject, product))
        .stream()
        .toList();
  }

  private static Optional<Finding> check(Subject subject, Product product) {
    return product
        .loss()
        .filter(loss -> loss.value().signum() > 0)
        .flatMap(loss -> product
            .centre()
            .flatMap(Product.Part::material)
            .flatMap(centre -> order(subject, centre.value())
                .filter(order -> order.loss().signum() > 0)
                .map(order -> {
                  Finding finding = INFO.at(
                          loss.span(),
                          "a loss of %s stands here, and one of %s in `makes` of %s",
                          Display.percent(loss.value()),
                          Display.percent(order.loss()),
                          Excerpt.of(centre.value()))
                      .because("only this one counts for the product; whoever adds the other plans"
                          + " it twice");
                  return subject
                      .ask(Lookup.of(Kind.MATERIAL, centre.value()))
                      .map(entry -> finding.withRelated(entry.origin(order.span()), "the other"))
                      .orElse(finding);
                })));
  }

  private static Optional<PieceOrder> order(Subject subject, String centre) {
    return subject
        .ask(Formulas.resolved(centre))
        .flatMap(resolved -> PieceOrder.of(resolved.formula().facts()));
  }
}
