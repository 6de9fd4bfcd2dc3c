package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.AgentTraits;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a syrup that goes into an egg foam first, is too cool to cook it, and is followed by a hotter
 * one.
 *
 * <p>Honey before sugar is an old and good custom where the honey suffices to set the foam; only a foam
 * that stays wholly below the temperature at which its protein sets is meant.
 */
public final class LowSyrupFirst implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("low-syrup-first", "the cooler syrup goes first and cannot cook the foam");

  private static final Set<String> POURING = Set.of("stream", "pour");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    List<Finding> findings = new ArrayList<>();
    Optional<Poured> before = Optional.empty();
    List<DoneStep> pours = subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.is(POURING))
        .toList();
    for (DoneStep pour : pours) {
      Optional<Poured> poured = poured(subject, pour);
      before
          .filter(first -> first.step.stageIndex() == pour.stageIndex())
          .flatMap(first -> poured.flatMap(second -> check(subject, first, second)))
          .ifPresent(findings::add);
      before = poured;
    }
    return findings;
  }

  /** A hot syrup that goes into a foam. */
  private record Poured(DoneStep step, Located<String> name, StageParcel syrup) {
    Span line() {
      return step.step().span();
    }
  }

  private static Optional<Poured> poured(Subject subject, DoneStep step) {
    Temperature hot = subject.threshold(Threshold.HOT_SYRUP);
    boolean isFoam = step.before().stream().anyMatch(StageParcel::isAerated);
    return step.step().objectNames().stream()
        .filter(name -> isFoam)
        .flatMap(name -> step.before().stream()
            .filter(parcel -> parcel.holds(name.value()) && !parcel.isAerated())
            .filter(parcel -> parcel.temperature().isWhollyAbove(hot))
            .map(parcel -> new Poured(step, name, parcel)))
        .findFirst();
  }

  private static Optional<Finding> check(Subject subject, Poured first, Poured second) {
    boolean isHotter =
        first.syrup.temperature().isWhollyBelow(second.syrup.temperature().low());
    return first
        .step
        .result()
        .merged()
        .filter(merged -> isHotter)
        .flatMap(merged -> uncooked(first.step, merged)
            .map(limit -> finding(subject, first, second, merged, limit)));
  }

  /** The temperature at which the foam's protein sets, if the merged mass stays wholly below it. */
  private static Optional<Temperature> uncooked(DoneStep step, Band<Temperature> merged) {
    return step.before().stream()
        .filter(StageParcel::isAerated)
        .flatMap(parcel -> parcel.agents().stream())
        .map(Agent::traits)
        .flatMap(traits -> traits.coagulates().map(AgentTraits.Condition::limit).stream())
        .filter(merged::isWhollyBelow)
        .findFirst();
  }

  private static Finding finding(
      Subject subject, Poured first, Poured second, Band<Temperature> merged, Temperature limit) {
    Finding finding = INFO.at(
            first.name.span(),
            "`%s` brings the foam to about %s, below the %s at which it sets; `%s` is hotter",
            first.name.value(),
            Display.celsius(merged),
            Display.celsius(limit),
            second.name.value())
        .because("a syrup that does not cook the foam wets it, and it stays weak: the hotter first")
        .withRelated(subject.entry().origin(second.name.span()), "the hotter one");
    boolean isWritten = subject.isWrittenHere(first.name.span());
    return isWritten
        ? finding.withFix(new Fix(
            "Let `" + second.name.value() + "` go first",
            List.of(
                new TextEdit(first.line(), second.line().of(subject.text())),
                new TextEdit(second.line(), first.line().of(subject.text())))))
        : finding;
  }
}
