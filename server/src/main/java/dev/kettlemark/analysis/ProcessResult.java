package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A formula followed through its stages.
 *
 * @param charge all that was weighed in
 * @param stages one result for each stage, in order
 * @param evaporated what left as vapour in all stages
 * @param leftOver what stages left that no later stage took, the last stage apart
 */
public record ProcessResult(
    ChargeWeight charge,
    List<StageResult> stages,
    Mass evaporated,
    Map<String, Outcome<Mass>> leftOver) {

  public ProcessResult {
    stages = List.copyOf(stages);
    leftOver = Map.copyOf(leftOver);
  }

  /** The last stage, whose mass is what the formula makes; empty for a formula without stages. */
  public Optional<StageResult> last() {
    return stages.isEmpty() ? Optional.empty() : Optional.of(stages.get(stages.size() - 1));
  }

  public Optional<StageResult> stage(String name) {
    return stages.stream().filter(stage -> stage.name().equals(name)).findFirst();
  }

  /** What the formula makes. */
  public Outcome<CookedWeight> cooked() {
    return last()
        .map(stage ->
            stage.left().mass().map(mass -> new CookedWeight(mass, stage.left().slack())))
        .orElseGet(() -> Outcome.known(new CookedWeight(Mass.ZERO, Mass.ZERO)));
  }

  /** What is left of the charge, as a share. */
  public Outcome<Ratio> yieldShare() {
    return charge.mass().grams() <= 0
        ? Outcome.unknown(Reason.MISSING_FIGURE, "nothing is weighed in")
        : cooked().map(cooked -> cooked.mass().dividedBy(charge.mass()));
  }
}
