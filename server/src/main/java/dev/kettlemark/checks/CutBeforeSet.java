package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a foam or a slow gel that is cut soon after it is deposited.
 *
 * <p>Agar, carrageenan and gellan are firm as soon as they are cool, and a glass must be cut while it is
 * warm; neither is meant. Less than half of the usual time gets a warning, and what is still shorter
 * than usual is worth knowing.
 */
public final class CutBeforeSet implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("cut-before-set", "a mass is cut before it has had time to set");

  private static final Set<String> SHAPING = Set.of("deposit", "spread", "pipe");

  /** A gel that melts only above this sets firm while it cools; pantry figures of agar and its like. */
  private static final Temperature QUICK_GEL = Temperature.ofCelsius(60);

  /** From here on pieces hold each other, and a foam or gel only binds them; common practice, no source. */
  private static final double HELD_BY_PIECES = 0.38;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.step().is("cut"))
        .filter(step -> step.before().stream().anyMatch(CutBeforeSet::setsSlowly))
        .filter(step -> pieces(step.formula()) < HELD_BY_PIECES)
        .flatMap(step -> check(subject, step).stream())
        .toList();
  }

  /** The share of the charge that stays in pieces. */
  private static double pieces(ComputedFormula formula) {
    return formula.amounts().lines().stream()
        .filter(line -> formula
            .material(line.line().ingredient().value())
            .flatMap(Material::ingredient)
            .filter(ingredient -> ingredient.hasRole("inclusion"))
            .isPresent())
        .mapToDouble(line -> line.share().map(BigFraction::doubleValue).orElse(0.0))
        .sum();
  }

  private static boolean setsSlowly(StageParcel parcel) {
    List<Agent> gels = parcel.agents().stream()
        .filter(agent -> agent.traits().sets().isPresent() && agent.ingredient().hasRole("gelling"))
        .toList();
    boolean isQuick = gels.stream()
        .anyMatch(agent ->
            agent.traits().melts().filter(t -> t.compareTo(QUICK_GEL) > 0).isPresent());
    return !isQuick && (parcel.isAerated() || !gels.isEmpty());
  }

  private static Optional<Finding> check(Subject subject, DoneStep cut) {
    List<DoneStep> waits = cut.since(SHAPING).stream()
        .filter(step -> step.effect() == Verb.Effect.WAIT || step.effect() == Verb.Effect.HEAT)
        .toList();
    boolean isUntold =
        waits.stream().anyMatch(step -> step.seconds(Connective.FOR).isEmpty());
    boolean isShaped = cut.past().stream().anyMatch(step -> step.is(SHAPING));
    double waited = waits.stream()
        .mapToDouble(step -> step.seconds(Connective.FOR).orElse(0.0))
        .sum();
    Duration usual = subject.threshold(Threshold.SETTING_TIME);
    return isUntold || !isShaped || waited >= usual.toSeconds()
        ? Optional.empty()
        : Optional.of(finding(subject, cut, waits, waited, (double) usual.toSeconds()));
  }

  private static Finding finding(
      Subject subject, DoneStep cut, List<DoneStep> waits, double waited, double usual) {
    Finding finding = (waits.isEmpty()
            ? INFO.at(cut.step().word().span(), "it is cut right after it is deposited")
            : INFO.at(
                cut.step().word().span(),
                "it is cut %s after it is deposited; usual is %s at the least",
                Display.duration(waited),
                Display.duration(usual)))
        .because("before it has set it drags at the knife and sticks to it");
    Severity severity = waited < usual / 2 ? Severity.WARNING : Severity.INFORMATION;
    return cut.past().stream()
        .filter(step -> step.is(SHAPING))
        .map(DoneStep::step)
        .filter(step -> subject.isWrittenHere(step.span()))
        .reduce((one, later) -> later)
        .map(step -> finding.withRelated(subject.entry().origin(step.span()), "shaped here"))
        .orElse(finding)
        .as(severity)
        .withFixes(fix(subject, cut, waits, usual).stream().toList());
  }

  private static Optional<Fix> fix(
      Subject subject, DoneStep cut, List<DoneStep> waits, double usual) {
    String enough = Display.duration(Math.max(usual, 12 * 3600.0));
    Optional<Located<Quantity>> time = waits.stream()
        .filter(step -> step.effect() == Verb.Effect.WAIT)
        .flatMap(step -> step.step().figure(Connective.FOR, Unit.Dimension.TIME).stream())
        .reduce((one, later) -> later);
    return Stream.of(cut.step().span())
        .filter(subject::isWrittenHere)
        .map(line -> time.map(
                figure -> Fix.replace("Let it set for " + enough, figure.span(), enough))
            .orElseGet(() -> new Fix(
                "Let it set for " + enough,
                List.of(WrittenLines.of(subject)
                    .above(line, WrittenLines.step("set", "for " + enough + " at 18-20 °C"))))))
        .findFirst();
  }
}
