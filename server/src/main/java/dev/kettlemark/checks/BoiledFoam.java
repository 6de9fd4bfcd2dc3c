package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reports a foam that is boiled.
 *
 * <p>Most often a bare {@code cook} means the syrup alone, and takes all that the stage holds.
 */
public final class BoiledFoam implements Rule {

  private static final RuleInfo INFO = RuleInfo.error("boiled-foam", "a whipped mass is boiled");

  private static final Set<Verb.Effect> BOILING = Set.of(Verb.Effect.COOK, Verb.Effect.BOIL);

  /** A nut or a sugar with less does not boil; common practice, no source. */
  private static final double LEAST_WATER = 0.05;

  private static final Temperature BOIL = Temperature.ofCelsius(100);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(BoiledFoam::boils)
        .filter(step -> step.before().stream().anyMatch(parcel -> isFoam(step, parcel)))
        .map(step -> finding(subject, step))
        .toList();
  }

  /** Yolks that are beaten with sugar are no foam that anybody wants to keep: custard is boiled. */
  private static boolean isFoam(DoneStep step, StageParcel parcel) {
    return parcel.isAerated()
        && !parcel.has(State.RIBBON)
        && (parcel.states().stream().anyMatch(state -> state.reaches(State.SOFT_PEAK))
            || WeighedIn.of(step.formula()).in(step.stageIndex(), parcel).stream()
                .anyMatch(held -> held.hasRole("whipping")));
  }

  private static boolean boils(DoneStep step) {
    return BOILING.contains(step.effect())
        || (step.effect() == Verb.Effect.HEAT
            && step.after().stream()
                .anyMatch(parcel ->
                    parcel.isAerated() && parcel.temperature().low().compareTo(BOIL) >= 0));
  }

  private static Finding finding(Subject subject, DoneStep step) {
    return INFO.at(
            step.step().word().span(),
            "`%s` boils what is whipped already",
            step.step().word().value())
        .because("the air leaves, and the foam does not come back: cook the syrup in a stage of its"
            + " own, or name what is to be cooked")
        .withFixes(aside(subject, step).stream().toList());
  }

  /** Nuts and essences beside a foam are not what somebody means to boil. */
  private static boolean isWet(StageParcel parcel) {
    return !parcel.isAerated()
        && parcel
            .composition()
            .toOptional()
            .filter(known -> known.water().fraction() > LEAST_WATER
                && known.fraction(Component.ETHANOL) < LEAST_WATER)
            .isPresent();
  }

  /** Names the syrup that lies beside the foam, where the step names nothing. */
  private static Optional<Fix> aside(Subject subject, DoneStep step) {
    String names = step.stage().stage().amounts().stream()
        .map(AmountLine::ingredient)
        .map(name -> name.value())
        .filter(name ->
            step.before().stream().anyMatch(parcel -> parcel.holds(name) && !parcel.isAerated()))
        .collect(Collectors.joining(", "));
    boolean isBare = step.step().objects().isEmpty() && !step.step().has(Connective.INTO);
    return Optional.of(step.step().word().span())
        .filter(word -> isBare
            && step.before().stream().anyMatch(BoiledFoam::isWet)
            && subject.isWrittenHere(step.step().span()))
        .map(word -> Fix.insert("Boil only " + names, word.end(), " " + names));
  }
}
