package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports a centre that is coated too cold or too warm.
 *
 * <p>A temperature on the coating step that lies above the usual range is that of the coat; below it,
 * it can only be that of the centre. Without one the centre has the temperature that the steps before
 * gave it.
 */
public final class CentreOffTemperature implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("centre-off-temperature", "a centre is too cold or too warm to be coated");

  private static final Set<String> COATING = Set.of("enrobe", "dip", "bottom");

  /** Degrees by which the room itself may lie outside the range, since no step can change it. */
  private static final double ROOM = 0.5;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Band<Temperature> usual = subject.threshold(Threshold.CENTRE_FOR_COAT);
    return subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.is(COATING))
        .flatMap(step -> check(subject, step, usual).stream())
        .toList();
  }

  private static Optional<Finding> check(Subject subject, DoneStep step, Band<Temperature> usual) {
    Optional<Located<Quantity>> written =
        step.step().figure(Connective.AT, Unit.Dimension.TEMPERATURE);
    Optional<Temperature> highest =
        written.map(figure -> Temperature.ofCelsius(figure.value().highInBase().doubleValue()));
    boolean isOfCentre = highest.filter(t -> t.compareTo(usual.high()) <= 0).isPresent();
    if (isOfCentre) {
      return written
          .filter(figure -> highest.orElseThrow().compareTo(usual.low()) < 0)
          .map(figure -> cold(subject, figure, usual));
    }
    return centre(step)
        .filter(parcel -> parcel.temperature().isWhollyBelow(usual.low())
            || parcel.temperature().isWhollyAbove(usual.high()))
        .filter(parcel -> !isRoom(step, parcel.temperature()))
        .filter(parcel -> parcel.temperature().isWhollyBelow(usual.low()) || !hasUntoldWait(step))
        .map(parcel -> predicted(subject, step, parcel, usual));
  }

  /** Whether it may have cooled for longer than anybody says. */
  private static boolean hasUntoldWait(DoneStep step) {
    return step.past().stream()
        .anyMatch(past ->
            past.effect() == Verb.Effect.WAIT && past.seconds(Connective.FOR).isEmpty());
  }

  private static boolean isRoom(DoneStep step, Band<Temperature> band) {
    double room = step.formula().kitchen().room().celsius();
    return Math.abs(band.low().celsius() - room) < ROOM
        && Math.abs(band.high().celsius() - room) < ROOM;
  }

  /** What the step names first is what it coats. */
  private static Optional<StageParcel> centre(DoneStep step) {
    return step.step().objectNames().stream()
        .findFirst()
        .flatMap(name ->
            step.before().stream().filter(parcel -> parcel.holds(name.value())).findFirst());
  }

  private static Finding cold(Subject subject, Located<Quantity> figure, Band<Temperature> usual) {
    Temperature low = Temperature.ofCelsius(figure.value().lowInBase().doubleValue());
    Finding finding = INFO.at(
            figure.span(),
            "the centre is coated at %s; usual is %s",
            Display.celsius(low),
            Display.celsius(usual))
        .because("damp settles on a cold centre, and its coat cracks when it warms");
    return subject.isWrittenHere(figure.span())
        ? finding.withFix(Fix.replace("Coat it at 20-24 °C", figure.span(), "20-24 °C"))
        : finding;
  }

  private static Finding predicted(
      Subject subject, DoneStep step, StageParcel parcel, Band<Temperature> usual) {
    String name = step.step().objectNames().get(0).value();
    boolean isCold = parcel.temperature().isWhollyBelow(usual.low());
    List<Fix> fixes = Stream.of(step.step().span())
        .filter(subject::isWrittenHere)
        .map(line -> WrittenLines.of(subject)
            .above(line, WrittenLines.step("rest", name + " for 2 h at 20-24 °C")))
        .map(edit -> new Fix("Let it rest at 20-24 °C first", List.of(edit)))
        .toList();
    return INFO.at(
            step.step().word().span(),
            "`%s` has about %s when it is coated; usual is %s",
            name,
            Display.celsius(parcel.temperature()),
            Display.celsius(usual))
        .because(
            isCold
                ? "damp settles on a cold centre, and its coat cracks when it warms"
                : "a warm centre melts its coat and takes it out of temper")
        .withFixes(fixes);
  }
}
