package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports fat that is whipped together with egg white or another protein that foams.
 *
 * <p>Only foreign fat counts: what a foaming protein brings of its own is in its dose. A foam that has
 * reached soft peak is less easily spoilt, so that fat is then a warning at most; one at firm peak takes
 * it. A mass that is whipped to the ribbon is a foam of yolk and means its fat.
 */
public final class FatInFoam implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("fat-in-foam", "fat is whipped together with a protein that should foam");

  private static final String WHIPPING = "whipping";

  /** What works something into a mass. */
  private static final Set<String> WORKED_IN = Set.of("fold", "mix", "stir");

  /** Chickpea water, the thinnest of them, holds twice as much; pantry figures. */
  private static final double LEAST_PROTEIN = 0.005;

  /** Tables give wax and the like as fat, as in a syrup; whatever is greasy holds more. */
  private static final double TRACE = 0.01;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    List<DoneStep> whips = subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.step().is("whip"))
        .toList();
    List<Finding> findings = new ArrayList<>();
    Set<Object> told = new HashSet<>();
    for (DoneStep whip : whips) {
      whipped(subject, whip, WeighedIn.of(whip.formula()))
          .filter(fatty -> told.add(fatty.culprit().line()))
          .ifPresent(fatty -> findings.add(finding(subject, whip.formula(), fatty)));
    }
    return findings;
  }

  /**
   * A foam with fat in it.
   *
   * @param culprit what brings most of the fat
   * @param fat all foreign fat, as a share of the foam
   * @param severity how much it matters
   */
  private record Fatty(WeighedIn.Held culprit, Ratio fat, Severity severity) {}

  private static Optional<Fatty> whipped(Subject subject, DoneStep whip, WeighedIn weighed) {
    if (whip.after().size() != 1 || isYolkFoam(whip) || hasReached(whip, State.FIRM_PEAK)) {
      return Optional.empty();
    }
    StageParcel foam = whip.after().get(0);
    List<WeighedIn.Held> held = weighed.in(whip.stageIndex(), foam);
    double grams = foam.mass().map(Mass::grams).orElse(0.0);
    if (grams <= 0 || held.stream().noneMatch(FatInFoam::isFoamingProtein)) {
      return Optional.empty();
    }
    double fat = held.stream().mapToDouble(FatInFoam::foreignFat).sum();
    Ratio share = Ratio.ofFraction(fat / grams);
    return severity(subject, whip, share)
        .flatMap(severity -> held.stream()
            .max((one, other) -> Double.compare(foreignFat(one), foreignFat(other)))
            .map(culprit -> new Fatty(culprit, share, severity)));
  }

  /** A gum that whips, such as a cellulose, stands fat. */
  private static boolean isFoamingProtein(WeighedIn.Held held) {
    return held.hasRole(WHIPPING)
        && held.material()
            .flatMap(material -> material.composition().toOptional())
            .filter(composition -> composition.fraction(Component.PROTEIN) > LEAST_PROTEIN)
            .isPresent();
  }

  private static Optional<Severity> severity(Subject subject, DoneStep whip, Ratio share) {
    boolean kills = share.compareTo(subject.threshold(Threshold.FOAM_FAT_FATAL)) > 0;
    if (hasReached(whip, State.SOFT_PEAK)) {
      return kills ? Optional.of(Severity.WARNING) : Optional.empty();
    }
    boolean harms = share.compareTo(subject.threshold(Threshold.FOAM_FAT)) > 0;
    return harms ? Optional.of(kills ? Severity.ERROR : Severity.WARNING) : Optional.empty();
  }

  private static boolean isYolkFoam(DoneStep whip) {
    return whip.step().has(Connective.UNTIL, State.RIBBON.word());
  }

  private static boolean hasReached(DoneStep whip, State peak) {
    return whip.before().stream()
        .flatMap(parcel -> parcel.states().stream())
        .anyMatch(state -> state.reaches(peak));
  }

  private static double foreignFat(WeighedIn.Held held) {
    boolean isFoam = held.hasRole(WHIPPING)
        || held.material().flatMap(m -> m.made()).filter(StageParcel::isAerated).isPresent();
    return isFoam
        ? 0
        : held.mass().grams()
            * held.material()
                .flatMap(material -> material.composition().toOptional())
                .map(composition -> composition.fraction(Component.FAT))
                .filter(fat -> fat > TRACE)
                .orElse(0.0);
  }

  private static Finding finding(Subject subject, ComputedFormula formula, Fatty fatty) {
    WeighedIn.Held culprit = fatty.culprit();
    return INFO.at(
            culprit.line().ingredient().span(),
            "`%s` brings fat into a foam, %s of it in all",
            culprit.name(),
            Display.percent(fatty.fat()))
        .as(fatty.severity())
        .because("fat takes the place of the protein around the bubbles, and the foam stays low or"
            + " falls; fold it in at firm peak")
        .withFixes(behindTheWhip(subject, culprit)
            .or(() -> LaterAddition.of(subject, formula, culprit.line(), culprit.stage(), "fold"))
            .stream()
            .toList());
  }

  private static boolean isFirm(Statement whip) {
    return whip.names(Connective.UNTIL).stream()
        .flatMap(name -> State.of(name.value()).stream())
        .anyMatch(state -> state.reaches(State.FIRM_PEAK));
  }

  /** Moves the step that works it in behind the last whip of its stage, if that ends firm. */
  private static Optional<Fix> behindTheWhip(Subject subject, WeighedIn.Held culprit) {
    List<Statement> steps = culprit.stage().steps();
    Optional<Statement> whip =
        steps.stream().filter(step -> step.is("whip")).reduce((one, later) -> later);
    return whip.filter(FatInFoam::isFirm)
        .flatMap(last -> steps.subList(0, steps.indexOf(last)).stream()
            .filter(step -> WORKED_IN.contains(step.word().value()))
            .filter(step ->
                step.objectNames().stream().anyMatch(name -> name.value().equals(culprit.name())))
            .filter(
                step -> subject.isWrittenHere(step.span()) && subject.isWrittenHere(last.span()))
            .findFirst()
            .map(step -> {
              WrittenLines lines = WrittenLines.of(subject);
              return new Fix(
                  "Move `" + step.word().value() + " " + culprit.name() + "` behind the whip",
                  List.of(
                      lines.without(step.span()),
                      lines.below(
                          last.span(), "  " + step.span().of(subject.text()).strip())));
            }));
  }
}
