package dev.kettlemark.checks;

import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Tells of a store so damp that a bare piece takes up water. */
public final class DampStorage implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("damp-storage", "a piece takes up water where it is stored");

  /** No store is kept drier, in percent of relative humidity; common practice, no source. */
  private static final double DRIEST_STORE = 35;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.declaration().stream()
        .flatMap(d -> d instanceof Product product ? Stream.of(product) : Stream.empty())
        .filter(product -> product.facts().first("pack").isEmpty())
        .filter(
            product -> product.parts().stream().noneMatch(part -> part.role().equals("coat")))
        .flatMap(product -> check(subject, product).stream())
        .toList();
  }

  private static Optional<Finding> check(Subject subject, Product product) {
    Optional<Located<Quantity>> damp =
        product.facts().first("shelf").flatMap(shelf -> shelf.figure(Unit.Dimension.HUMIDITY));
    Optional<Located<String>> centre = product.centre().flatMap(Product.Part::material);
    if (damp.isEmpty() || centre.isEmpty()) {
      return Optional.empty();
    }
    double air = damp.get().value().highInBase().doubleValue();
    double gap = subject.threshold(Threshold.STORE_GAP).fraction();
    return PartActivity.of(subject, centre.get().value())
        .filter(activity -> activity.high().fraction() + gap < air)
        .map(activity -> finding(subject, damp.get(), centre.get(), activity));
  }

  private static Finding finding(
      Subject subject, Located<Quantity> damp, Located<String> centre, Band<Ratio> activity) {
    double percent = Math.floor(activity.high().fraction() * 20) * 5;
    String drier = Display.fixed(percent, 0) + " %RH";
    Columns columns = new Columns(subject.section());
    Finding finding = INFO.at(
            damp.span(),
            "`%s` has a water activity of %s, and the air may have %s",
            centre.value(),
            Display.activity(activity),
            Columns.shown(damp.span().of(subject.text())))
        .because("it takes up water from any air damper than itself, turns sticky and flows")
        .withRelated(subject.entry().origin(centre.span()), "the centre")
        .withFix(new Fix(
            "Pack it in a tight film",
            List.of(columns.addFact(Optional.empty(), "pack", "\"tight film\""))));
    return percent < DRIEST_STORE
        ? finding
        : finding.withFix(Fix.replace("Keep it below " + drier, damp.span(), drier));
  }
}
