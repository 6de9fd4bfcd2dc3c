package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reports a hot syrup that waits: it goes on boiling down and browning. */
public final class LongHotHold implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "long-hot-hold", "a hot syrup waits, and goes on boiling down and browning");

  private static final Set<Verb> WAITING = EnumSet.of(Verb.HOLD, Verb.STAND, Verb.REST, Verb.KEEP);

  /** Nobody minds so many seconds; common practice, no source. */
  private static final double A_MOMENT = 60;

  /** At this heat a syrup that is not stirred hardly changes any more; common practice, no source. */
  private static final String SHOCKED = "130 °C";

  /** With less of sugars and polyols in it a mass is no syrup. */
  private static final double SYRUP = 0.5;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Temperature hot = subject.threshold(Threshold.HOT_HOLD);
    return subject.formula().stream()
        .flatMap(formula -> formula.process().stages().stream())
        .flatMap(stage -> stage.steps().stream())
        .filter(step ->
            Verb.of(step.step().word().value()).filter(WAITING::contains).isPresent())
        .filter(step -> step.before().stream().anyMatch(LongHotHold::isSyrup))
        .filter(
            step -> heat(step).filter(band -> band.low().compareTo(hot) >= 0).isPresent())
        .flatMap(step -> check(subject, step).stream())
        .toList();
  }

  private static boolean isSyrup(StageParcel parcel) {
    return parcel
        .composition()
        .map(composition -> composition.sweetSolids().fraction() > SYRUP)
        .orElse(false);
  }

  /** The heat at which it waits: as the step says, or as it came. */
  private static Optional<Band<Temperature>> heat(StepResult step) {
    return step.step()
        .figure(Connective.AT, Unit.Dimension.TEMPERATURE)
        .or(() -> step.step().figure(Connective.TO, Unit.Dimension.TEMPERATURE))
        .map(figure -> Boiling.band(figure.value()))
        .or(() -> step.before().stream()
            .filter(LongHotHold::isSyrup)
            .map(StageParcel::temperature)
            .findFirst());
  }

  private static Optional<Finding> check(Subject subject, StepResult step) {
    Optional<Located<Quantity>> time = step.step().figure(Connective.FOR, Unit.Dimension.TIME);
    double seconds = time.map(t -> t.value().highInBase().doubleValue()).orElse(0.0);
    if (time.isEmpty() || seconds < A_MOMENT) {
      return Optional.empty();
    }
    boolean isLong = seconds > subject.threshold(Threshold.LONG_HOT_HOLD).toSeconds();
    Finding finding = INFO.at(
            time.get().span(),
            "the syrup waits for %s at %s",
            Display.duration(seconds),
            heat(step).map(Display::celsius).orElse(""))
        .because("it goes on losing water and taking colour; set the pan in cold water, and keep"
            + " the water out of the hot sugar")
        .as(isLong ? Severity.WARNING : Severity.INFORMATION);
    return Optional.of(
        subject.isWrittenHere(step.step().span()) ? finding.withFix(shock(step)) : finding);
  }

  private static Fix shock(StepResult step) {
    String objects =
        step.step().objectNames().stream().map(Located::value).collect(Collectors.joining(", "));
    String rest = (objects.isEmpty() ? "" : objects + " ") + "to " + SHOCKED;
    return Fix.replace(
        "Cool it to " + SHOCKED + " instead",
        step.step().span(),
        WrittenLines.step("cool", rest).strip());
  }
}
