package dev.kettlemark.pictures;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.CookedStage;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.SyrupBoiling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When the whisk must start, so that the foam is ready as the syrup is.
 *
 * <p>Told by the temperature of the syrup at that moment, as a cook reads it. An even heat drives off even amounts of
 * water, so the time before the end gives the water still in the syrup, and that gives where it boils.
 *
 * @param foam the stage that is whipped
 * @param seconds how long the whisk needs
 * @param passes what the syrup boils at when the whisk starts
 */
record WhiskStart(String foam, double seconds, Temperature passes) {

  /**
   * The start for every foam that a cooked stage is streamed or poured into, or why it cannot be told.
   *
   * <p>Only the first syrup that a foam meets waits for the whisk; by the second it runs already.
   */
  static List<Outcome<WhiskStart>> of(ComputedFormula computed, StageResult syrup) {
    Optional<StepResult> cook = CookedStage.lastCook(syrup);
    List<Outcome<WhiskStart>> starts = new ArrayList<>();
    if (cook.isEmpty()) {
      return starts;
    }
    for (StageResult foam : computed.process().stages()) {
      boolean meets = computed
          .formula()
          .steps()
          .filter(step -> isInto(step, foam))
          .findFirst()
          .filter(step ->
              step.objectNames().stream().anyMatch(name -> name.value().equals(syrup.name())))
          .isPresent();
      if (meets && foam.left().isAerated()) {
        starts.add(start(foam, cook.get(), computed.kitchen()));
      }
    }
    return starts;
  }

  String words() {
    return "start the whisk for " + foam + " when the syrup passes about "
        + Display.trimmed(passes.celsius(), 0) + " °C, " + Display.duration(seconds)
        + " before the end, if it boils evenly";
  }

  private static boolean isInto(Statement step, StageResult foam) {
    return (step.is("stream") || step.is("pour"))
        && step.names(Connective.INTO).stream().anyMatch(name -> name.value().equals(foam.name()));
  }

  private static Outcome<WhiskStart> start(StageResult foam, StepResult cook, Kitchen kitchen) {
    String name = StageNames.title(foam);
    Optional<Double> whisk = whisk(foam);
    Optional<Double> boil = seconds(cook.step());
    if (whisk.isEmpty()) {
      return untold(name, Remark.of("it is not said how long the whisk needs"));
    }
    if (boil.isEmpty()) {
      return untold(name, Remark.of("it is not said how long the syrup cooks"));
    }
    if (whisk.get() >= boil.get()) {
      return untold(name, Remark.of("the whisk needs as long as the syrup cooks, or longer"));
    }
    Mass still = cook.evaporated().times(whisk.get() / boil.get());
    return cook.after().stream()
        .findFirst()
        .map(after -> after.portion())
        .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "nothing is cooked"))
        .flatMap(left -> SyrupBoiling.boilingPoint(
            left.composition().withWaterFraction(water(left, still)), kitchen.pressure()))
        .map(passes -> new WhiskStart(name, whisk.get(), passes));
  }

  private static Outcome<WhiskStart> untold(String foam, Remark why) {
    return Outcome.unknown(
        Reason.MISSING_FIGURE, "when to start the whisk for %s cannot be told: %s", foam, why);
  }

  private static Ratio water(Portion left, Mass still) {
    return left.massOf(Component.WATER).plus(still).dividedBy(left.mass().plus(still));
  }

  /** From the first beat to the end of the stage; empty where a step of it does not say how long. */
  private static Optional<Double> whisk(StageResult foam) {
    double all = 0;
    boolean started = false;
    for (Statement step : foam.stage().steps()) {
      Optional<Verb.Effect> effect = Verb.of(step.word().value()).map(Verb::effect);
      started |= effect.filter(found -> found == Verb.Effect.AERATE).isPresent();
      boolean takesTime = effect
          .filter(found -> found != Verb.Effect.NONE && found != Verb.Effect.MEASURE)
          .isPresent();
      if (started && takesTime) {
        Optional<Double> seconds = seconds(step);
        if (seconds.isEmpty()) {
          return Optional.empty();
        }
        all += seconds.get();
      }
    }
    return started ? Optional.of(all) : Optional.empty();
  }

  private static Optional<Double> seconds(Statement step) {
    return step.figure(Connective.FOR, Unit.Dimension.TIME)
        .or(() -> step.figure(Connective.OVER, Unit.Dimension.TIME))
        .map(Located::value)
        .map(time -> time.middleInBase().doubleValue())
        .filter(time -> time > 0);
  }
}
