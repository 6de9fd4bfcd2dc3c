package dev.kettlemark.analysis;

import java.util.List;
import java.util.Optional;

/** Which step of a stage a temperature was measured after. */
final class TrialSteps {

  private TrialSteps() {}

  /** The step of a verb, and of what it acts on where that is said; of several the last. */
  static Optional<StepResult> named(StageResult stage, List<String> named) {
    if (named.isEmpty()) {
      return Optional.empty();
    }
    List<StepResult> steps = stage.steps().stream()
        .filter(step -> step.step().is(named.get(0)))
        .filter(step -> step.step().objectNames().stream()
            .map(name -> name.value())
            .toList()
            .containsAll(named.subList(1, named.size())))
        .toList();
    return last(steps.stream().filter(step -> step.merged().isPresent()).toList())
        .or(() -> last(steps));
  }

  /** The last step at which parcels of different heat met. */
  static Optional<StepResult> lastMeeting(StageResult stage) {
    return last(stage.steps().stream().filter(step -> step.merged().isPresent()).toList());
  }

  private static Optional<StepResult> last(List<StepResult> steps) {
    return steps.isEmpty() ? Optional.empty() : Optional.of(steps.get(steps.size() - 1));
  }
}
