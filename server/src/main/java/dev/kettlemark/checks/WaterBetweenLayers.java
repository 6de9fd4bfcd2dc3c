package dev.kettlemark.checks;

import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reports layers of a piece of which one dries and the other goes soft. */
public final class WaterBetweenLayers implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("water-between-layers", "water moves from one layer of a piece to the next");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    List<Finding> findings = new ArrayList<>();
    subject.declaration().stream()
        .flatMap(d -> d instanceof Product product ? Stream.of(product) : Stream.empty())
        .map(Product::parts)
        .forEach(parts -> {
          for (int i = 0; i + 1 < parts.size(); i++) {
            check(subject, parts.get(i), parts.get(i + 1)).ifPresent(findings::add);
          }
        });
    return findings;
  }

  private static Optional<Finding> check(Subject subject, Product.Part one, Product.Part next) {
    Optional<Band<Ratio>> first = activity(subject, one);
    Optional<Band<Ratio>> second = activity(subject, next);
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    boolean firstIsWetter = first.get().low().compareTo(second.get().low()) > 0;
    Band<Ratio> wet = firstIsWetter ? first.get() : second.get();
    Band<Ratio> dry = firstIsWetter ? second.get() : first.get();
    double gap = wet.low().minus(dry.high()).fraction();
    return gap > subject.threshold(Threshold.LAYER_GAP).fraction()
        ? Optional.of(finding(
            subject, firstIsWetter ? one : next, wet, firstIsWetter ? next : one, dry, next))
        : Optional.empty();
  }

  /** A coat of fat or sugar is a barrier, or meant to dry. */
  private static Optional<Band<Ratio>> activity(Subject subject, Product.Part part) {
    return part.role().equals("coat")
        ? Optional.empty()
        : part.material().flatMap(name -> PartActivity.of(subject, name.value()));
  }

  private static Finding finding(
      Subject subject,
      Product.Part wet,
      Band<Ratio> wetActivity,
      Product.Part dry,
      Band<Ratio> dryActivity,
      Product.Part lower) {
    String barrier = "layer     3 % of centre        cocoa-butter";
    return INFO.at(
            span(dry),
            "`%s` has a water activity of %s, and `%s` beside it %s",
            name(dry),
            Display.activity(dryActivity),
            name(wet),
            Display.activity(wetActivity))
        .because("the dry one goes soft and the wet one hard; a thin layer of fat between them"
            + " stops the water")
        .withRelated(subject.entry().origin(span(wet)), "the wetter one")
        .withFix(new Fix(
            "Put a layer of cocoa butter between them",
            List.of(WrittenLines.of(subject).above(lower.span(), "  " + barrier))));
  }

  private static Span span(Product.Part part) {
    return part.material().map(Located::span).orElseGet(part::span);
  }

  private static String name(Product.Part part) {
    return part.material().map(Located::value).orElse(part.role());
  }
}
