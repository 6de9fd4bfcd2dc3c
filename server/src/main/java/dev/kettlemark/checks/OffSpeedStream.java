package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a hot syrup that goes into a foam in a gush or in a trickle.
 *
 * <p>In grams for each second. A large batch has a large bowl, so that what takes a minute is no gush;
 * and a small one is soon poured, so that what takes less than two minutes is no trickle.
 */
public final class OffSpeedStream implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("off-speed-stream", "hot syrup goes into a foam in a gush or in a trickle");

  private static final Set<String> POURING = Set.of("stream", "pour");

  /** What takes as long as this is no gush; common practice, no source. */
  private static final double SLOW_ENOUGH = 60;

  /** What is over by then is no trickle; common practice, no source. */
  private static final double QUICK_ENOUGH = 120;

  /** Grams in a second to aim at; common practice, no source. */
  private static final double COMFORTABLE = 6.5;

  private static final int ROUNDED_TO = 15;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .filter(formula -> !formula.isNominal())
        .flatMap(DoneStep::of)
        .filter(step -> step.is(POURING))
        .filter(step -> step.before().stream().anyMatch(StageParcel::isAerated))
        .flatMap(step -> check(subject, step).stream())
        .toList();
  }

  private static Optional<Finding> check(Subject subject, DoneStep step) {
    Optional<Located<Quantity>> over = step.step().figure(Connective.OVER, Unit.Dimension.TIME);
    double seconds = over.map(time -> time.value().middleInBase().doubleValue()).orElse(0.0);
    double grams = step.before().stream()
        .filter(parcel -> !parcel.isAerated())
        .filter(
            parcel -> parcel.temperature().isWhollyAbove(subject.threshold(Threshold.HOT_SYRUP)))
        .mapToDouble(parcel -> parcel.mass().map(Mass::grams).orElse(0.0))
        .sum();
    if (seconds <= 0 || grams <= 0) {
      return Optional.empty();
    }
    double rate = grams / seconds;
    boolean isGush =
        rate > subject.threshold(Threshold.FASTEST_STREAM).grams() && seconds < SLOW_ENOUGH;
    boolean isTrickle =
        rate < subject.threshold(Threshold.SLOWEST_STREAM).grams() && seconds > QUICK_ENOUGH;
    return over.filter(time -> isGush || isTrickle)
        .map(time -> finding(subject, time, grams, seconds, isGush));
  }

  private static Finding finding(
      Subject subject, Located<Quantity> over, double grams, double seconds, boolean isGush) {
    Finding finding = INFO.at(
            over.span(),
            "%s of hot syrup in %s is %s g in a second, usual is %s to %s g",
            Display.estimate(Mass.ofGrams(grams)),
            Display.duration(seconds),
            Display.trimmed(grams / seconds, 1),
            Display.trimmed(subject.threshold(Threshold.SLOWEST_STREAM).grams(), 1),
            Display.trimmed(subject.threshold(Threshold.FASTEST_STREAM).grams(), 1))
        .because(
            isGush
                ? "a gush splashes and burns, and the syrup sinks below the foam"
                : "a trickle is cold before it is in the foam, and stiffens on the bowl");
    if (!subject.isWrittenHere(over.span())) {
      return finding;
    }
    long enough = ROUNDED_TO * Math.max(2, Math.round(Math.ceil(grams / COMFORTABLE / ROUNDED_TO)));
    String time = enough + " s";
    return finding.withFix(Fix.replace("Take " + time + " for it", over.span(), time));
  }
}
