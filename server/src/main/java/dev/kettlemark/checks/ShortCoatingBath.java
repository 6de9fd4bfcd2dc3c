package dev.kettlemark.checks;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.text.Excerpt;
import java.util.List;
import java.util.Optional;

/**
 * Reports a coat of melted fat for which no more is planned than stays on the pieces, or less than can
 * be tempered.
 */
public final class ShortCoatingBath implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "short-coating-bath", "less of a coating is planned than it takes to coat with it");

  /** A coating with so much fat is melted, and pieces are drawn through it; common practice, no source. */
  private static final double MELTS = 0.2;

  /** Half as much again runs off and comes back; common practice, no source. */
  private static final double USUAL_SPARE = 50;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.ask(Products.computed(subject.entry())).stream()
        .flatMap(computed -> computed.product().parts().stream()
            .filter(part -> part.role().equals("coat"))
            .flatMap(coat -> need(computed, coat)
                .filter(need -> isMelted(subject, need.material()))
                .flatMap(need -> finding(subject, computed.product(), coat, need))
                .stream()))
        .toList();
  }

  private static Optional<ComputedProduct.Need> need(ComputedProduct computed, Product.Part coat) {
    return computed.needs().stream()
        .filter(need -> need.role().equals(coat.role()))
        .filter(need ->
            coat.material().filter(name -> name.value().equals(need.material())).isPresent())
        .filter(need -> need.onPieces().grams() > 0)
        .findFirst();
  }

  private static boolean isMelted(Subject subject, String name) {
    Optional<Ingredient> ingredient =
        subject.ingredient(name).filter(found -> found.hasRole("coating"));
    return ingredient
        .flatMap(found -> found.composition().toOptional())
        .filter(composition -> composition.fraction(Component.FAT) >= MELTS)
        .isPresent();
  }

  private static Optional<Finding> finding(
      Subject subject, Product product, Product.Part coat, ComputedProduct.Need need) {
    Mass bath = subject.threshold(Threshold.COATING_BATH);
    boolean isShort = need.withLoss().grams() < bath.grams();
    if (coat.spare().isPresent() && !isShort) {
      return Optional.empty();
    }
    double spare =
        Math.max(USUAL_SPARE, Math.ceil((bath.grams() / need.onPieces().grams() - 1) * 100 - 1e-9));
    Finding finding = INFO.at(
            coat.measure().span(),
            coat.spare().isPresent()
                ? "%s of %s with its spare is less than the %s that can be worked with"
                : "%s of %s stays on the pieces, and no spare is planned",
            Display.mass(need.withLoss()),
            Excerpt.of(need.material()),
            Display.batch(bath))
        .because("pieces are coated out of a bath; what runs off and what the bath needs comes on"
            + " top, and can be used again");
    return Optional.of(OtherPlace.heading(
        finding.withFix(planned(subject, product, coat, need, spare)),
        subject,
        need.material(),
        "what it is coated with"));
  }

  private static Fix planned(
      Subject subject,
      Product product,
      Product.Part coat,
      ComputedProduct.Need need,
      double spare) {
    String figure = Display.trimmed(spare, 0) + " %";
    Columns columns = new Columns(subject.section());
    Optional<Located<Quantity>> written = coat.spare().isPresent()
        ? product
            .facts()
            .all("spare")
            .filter(fact -> isFor(fact, need.material()))
            .flatMap(fact -> fact.objectFigure(Unit.Dimension.SHARE).stream())
            .findFirst()
        : Optional.empty();
    return new Fix(
        "Plan a spare of " + figure,
        List.of(written
            .map(found -> columns.replace(found.span(), figure))
            .orElseGet(() ->
                columns.addFact(Optional.of("shelf"), "spare", figure + " " + need.material()))));
  }

  private static boolean isFor(Statement spare, String material) {
    return spare.objectNames().isEmpty() || spare.objectNames().get(0).value().equals(material);
  }
}
