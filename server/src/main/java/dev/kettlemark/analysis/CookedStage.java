package dev.kettlemark.analysis;

import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import java.util.Optional;

/** What can be said of a stage that boils water away. */
public final class CookedStage {

  private CookedStage() {}

  /** The last step that boils up to a temperature; empty where the stage only mixes and moulds. */
  public static Optional<StepResult> lastCook(StageResult stage) {
    return stage.steps().stream()
        .filter(step -> Verb.of(step.step().word().value())
            .map(Verb::effect)
            .filter(effect -> effect == Verb.Effect.COOK || effect == Verb.Effect.BOIL)
            .isPresent())
        .filter(step -> Boiling.target(step.step()).isPresent())
        .reduce((earlier, later) -> later);
  }

  /** All that went into a stage: what was weighed, and what was taken as it then was. */
  public static Outcome<Mass> putIn(StageResult stage) {
    return stage.taken().map(stage.weighed()::plus);
  }

  /** What of a stage cannot boil away. */
  public static Outcome<Mass> solids(StageResult stage) {
    return stage
        .left()
        .portion()
        .map(portion -> portion.mass().times(portion.composition().solids()));
  }
}
