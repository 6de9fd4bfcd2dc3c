package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a syrup of much sucrose that is cooked without a covered boil or a wash of the pan's wall.
 *
 * <p>Steam under a lid runs down the wall and takes the crystals with it. A syrup that is said to be
 * dissolved or clear shows none, and sugar that is melted dry has none.
 */
public final class UndissolvedCook implements Rule {

  private static final RuleInfo INFO = RuleInfo.hint(
      "undissolved-cook", "a syrup is cooked without a step that clears the wall of crystals");

  /** Below it a syrup is not cooked far enough to grain in the pan; common practice, no source. */
  private static final Temperature GRAINS_ABOVE = Temperature.ofCelsius(110);

  /** With less water sugar is melted rather than dissolved; an own estimate. */
  private static final double MELTED_DRY = 0.05;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.step().is("cook"))
        .filter(step -> step.after().stream()
            .anyMatch(parcel -> parcel.temperature().isWhollyAbove(GRAINS_ABOVE)))
        .filter(step -> step.before().stream().noneMatch(StageParcel::isAerated))
        .filter(step -> !isCleared(step))
        .flatMap(step -> sucrose(step)
            .filter(share -> share.compareTo(subject.threshold(Threshold.GRAIN_PRONE)) > 0)
            .map(share -> finding(subject, step.step(), share))
            .stream())
        .toList();
  }

  private static boolean isCleared(DoneStep cook) {
    boolean isClear = cook.before().stream()
        .flatMap(parcel -> parcel.states().stream())
        .anyMatch(state -> state.reaches(State.DISSOLVED));
    return isClear
        || Stream.concat(cook.past().stream().map(DoneStep::step), Stream.of(cook.step()))
            .anyMatch(UndissolvedCook::clears);
  }

  private static boolean clears(Statement step) {
    return step.has(Connective.UNDER, "lid")
        || step.names(Connective.UNTIL).stream()
            .flatMap(name -> State.of(name.value()).stream())
            .anyMatch(state -> state.reaches(State.DISSOLVED))
        || step.names(Connective.WHILE).stream().anyMatch(word -> word.value().startsWith("wash"));
  }

  /** The share of sucrose in all solids of what is cooked; empty where it is melted dry or unknown. */
  private static Optional<Ratio> sucrose(DoneStep cook) {
    List<Portion> portions = cook.before().stream()
        .flatMap(parcel -> parcel.portion().toOptional().stream())
        .filter(portion -> portion.mass().grams() > 0)
        .toList();
    if (portions.isEmpty() || portions.size() < cook.before().size()) {
      return Optional.empty();
    }
    Composition charge = Composition.mix(portions);
    double solids = charge.solids().fraction();
    return charge.water().fraction() > MELTED_DRY && solids > 0
        ? Optional.of(Ratio.ofFraction(charge.fraction(Component.SUCROSE) / solids))
        : Optional.empty();
  }

  private static Finding finding(Subject subject, Statement cook, Ratio sucrose) {
    List<Fix> fixes = Stream.of(cook.span())
        .filter(subject::isWrittenHere)
        .map(line -> WrittenLines.of(subject)
            .above(line, WrittenLines.step("boil", "under lid for 3 min until dissolved")))
        .map(edit -> new Fix("Boil it under a lid first", List.of(edit)))
        .toList();
    return INFO.at(
            cook.word().span(),
            "%s of the solids are sucrose, and no step clears the wall of the pan",
            Display.estimate(sucrose))
        .because(
            "one crystal on the wall can grain the whole pan; steam under a lid washes it down")
        .withFixes(fixes);
  }
}
