package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports much that is folded into a foam while the whisk runs on high.
 *
 * <p>A syrup that is streamed in costs air as well, and everybody counts with it; what is folded need
 * not.
 */
public final class FastFold implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("fast-fold", "much is folded into a foam while the whisk runs on high");

  private static final Set<String> FOLDING = Set.of("fold", "mix");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.is(FOLDING))
        .flatMap(step -> fast(step)
            .flatMap(speed -> added(subject, step)
                .filter(share -> share.compareTo(subject.threshold(Threshold.HEAVY_FOLD)) > 0)
                .map(share -> finding(subject, speed, share)))
            .stream())
        .toList();
  }

  private static Optional<Located<String>> fast(DoneStep step) {
    return step.step().names(Connective.ON).stream()
        .filter(speed -> speed.value().equals("high"))
        .findFirst();
  }

  /** What goes into the foam, as a share of both; empty without a foam or for a hot syrup. */
  private static Optional<Ratio> added(Subject subject, DoneStep step) {
    List<StageParcel> others =
        step.before().stream().filter(parcel -> !parcel.isAerated()).toList();
    boolean isSyrup = others.stream()
        .anyMatch(
            parcel -> parcel.temperature().isWhollyAbove(subject.threshold(Threshold.HOT_SYRUP)));
    double all = grams(step.before());
    return others.size() == step.before().size() || isSyrup || all <= 0
        ? Optional.empty()
        : Optional.of(Ratio.ofFraction(grams(others) / all));
  }

  private static double grams(List<StageParcel> parcels) {
    return parcels.stream()
        .mapToDouble(parcel -> parcel.mass().map(Mass::grams).orElse(0.0))
        .sum();
  }

  private static Finding finding(Subject subject, Located<String> speed, Ratio share) {
    Finding finding = INFO.at(
            speed.span(),
            "%s of the mass is folded in while the whisk runs on high",
            Display.estimate(share))
        .because("so much knocks the air out; the lowest speed keeps it");
    return subject.isWrittenHere(speed.span())
        ? finding.withFix(Fix.replace("Fold on low", speed.span(), "low"))
        : finding;
  }
}
