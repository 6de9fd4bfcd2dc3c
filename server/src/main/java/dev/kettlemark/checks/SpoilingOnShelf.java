package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.GrowthLimit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports a piece that is to keep in a room, and is so wet that moulds or worse grow on it.
 *
 * <p>Below a water activity of 0.60 nothing grows, and above 0.85 germs do that make people ill.
 */
public final class SpoilingOnShelf implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
          "spoiling-on-shelf", "a piece is too wet to keep as long as it says in a room")
      .forSafety();

  /** A cold store is no warmer; Regulation (EC) No 852/2004 leaves it to the house, 8 °C is common practice. */
  private static final Temperature COLD = Temperature.ofCelsius(8);

  private static final double DAY = 86_400;

  private static final Set<String> HOLDING = Set.of("centre", "layer", "filling");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.declaration().stream()
        .flatMap(d -> d instanceof Product product ? Stream.of(product) : Stream.empty())
        .flatMap(product -> product.facts().first("shelf").stream()
            .flatMap(shelf -> check(subject, product, shelf)))
        .toList();
  }

  private static Stream<Finding> check(Subject subject, Product product, Statement shelf) {
    Optional<Located<Quantity>> time = shelf.objectFigure(Unit.Dimension.TIME);
    boolean isCold = shelf
        .figure(Connective.AT, Unit.Dimension.TEMPERATURE)
        .filter(store -> Boiling.band(store.value()).high().compareTo(COLD) <= 0)
        .isPresent();
    return time.stream()
        .filter(t -> !isCold)
        .flatMap(t -> product.parts().stream()
            .filter(part -> HOLDING.contains(part.role()))
            .flatMap(
                part -> part.material().flatMap(name -> check(subject, t, shelf, name)).stream()));
  }

  private static Optional<Finding> check(
      Subject subject, Located<Quantity> time, Statement shelf, Located<String> name) {
    double seconds = time.value().highInBase().doubleValue();
    Ratio limit = subject.threshold(Threshold.SHELF_ACTIVITY);
    boolean isShort = seconds <= subject.threshold(Threshold.SHORT_SHELF).toSeconds();
    return PartActivity.of(subject, name.value())
        .filter(activity -> activity.isWhollyAbove(GrowthLimit.SHELF_STABLE)
            ? seconds > DAY
            : !isShort && activity.isWhollyAbove(limit))
        .map(activity -> finding(subject, time, shelf, name, activity));
  }

  /** Jellies and creams of 0.65 to 0.80 are sold everywhere; they just do not keep for long. */
  private static Severity severity(Subject subject, Located<Quantity> time, Band<Ratio> activity) {
    if (activity.isWhollyAbove(GrowthLimit.SHELF_STABLE)) {
      return Severity.ERROR;
    }
    boolean isLong = time.value().highInBase().doubleValue()
        > subject.threshold(Threshold.LONG_SHELF).toSeconds();
    return isLong || activity.isWhollyAbove(GrowthLimit.MOST_MOULDS.leastActivity())
        ? Severity.WARNING
        : Severity.INFORMATION;
  }

  private static Finding finding(
      Subject subject,
      Located<Quantity> time,
      Statement shelf,
      Located<String> name,
      Band<Ratio> activity) {
    boolean isUnsafe = activity.isWhollyAbove(GrowthLimit.SHELF_STABLE);
    Finding finding = INFO.at(
            time.span(),
            "`%s` has a water activity of %s, too wet for %s in a room",
            name.value(),
            Display.activity(activity),
            Columns.shown(time.span().of(subject.text())))
        .because((isUnsafe
                ? "germs that make people ill grow above 0.85; keep it cold, by local food law"
                : "moulds and yeasts that tolerate sugar grow from 0.60 to 0.65 on")
            + "; less water, or more glucose, fructose or glycerol in place of sucrose lower it")
        .withRelated(subject.entry().origin(name.span()), "what is so wet")
        .as(severity(subject, time, activity));
    if (!isUnsafe) {
      finding =
          finding.withFix(Fix.replace("Shorten the shelf life to 2 weeks", time.span(), "2 weeks"));
    }
    return finding.withFix(shelf
        .figure(Connective.AT, Unit.Dimension.TEMPERATURE)
        .map(store -> Fix.replace("Keep it cold, at 2–5 °C", store.span(), "2-5 °C"))
        .orElseGet(() -> Fix.insert("Keep it cold, at 2–5 °C", time.span().end(), " at 2-5 °C")));
  }
}
