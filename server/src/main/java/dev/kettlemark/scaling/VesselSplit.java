package dev.kettlemark.scaling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.ProcessResult;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.House;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import java.util.List;
import java.util.Optional;

/**
 * A stage that its bowl cannot take as it is.
 *
 * @param stage the stage's name
 * @param vessel the bowl's name
 * @param total what would lie in the bowl
 * @param whips what its whisk can take
 * @param charges into how many equal charges the stage must go; 1 where the bowl is too large
 */
public record VesselSplit(String stage, String vessel, Mass total, Band<Mass> whips, int charges) {

  static List<VesselSplit> of(ComputedFormula formula, ProcessResult process) {
    return process.stages().stream()
        .flatMap(stage -> of(formula, stage).stream())
        .toList();
  }

  /** What one stage asks of its bowl that the bowl cannot do; empty where it can. */
  public static Optional<VesselSplit> of(ComputedFormula formula, StageResult stage) {
    return formula.kitchen().vesselOf(stage.stage()).flatMap(vessel -> split(stage, vessel));
  }

  private static Optional<VesselSplit> split(StageResult stage, House.Vessel vessel) {
    if (vessel.whips().isEmpty()) {
      return Optional.empty();
    }
    Band<Mass> whips = vessel.whips().get();
    Mass total = Mass.ofGrams(Scaling.gramsIn(stage));
    if (whips.contains(total) || isNear(total, whips.low()) || isNear(total, whips.high())) {
      return Optional.empty();
    }
    int charges = Math.max(1, (int) Math.ceil(total.grams() / whips.high().grams() - 1e-9));
    return Optional.of(new VesselSplit(stage.name(), vessel.name().value(), total, whips, charges));
  }

  /** Whether one is the other, but for how a computer counts. */
  private static boolean isNear(Mass one, Mass other) {
    return Math.abs(one.grams() - other.grams()) <= 1e-9 * other.grams();
  }

  /** What one charge weighs. */
  public Mass each() {
    return total.times(1.0 / charges);
  }

  /** One plain sentence. */
  public String words() {
    if (charges == 1) {
      return "%s: %s is less than %s whips (from %s); take a smaller bowl or a larger batch"
          .formatted(stage, Display.mass(total), vessel, Display.mass(whips.low()));
    }
    return "%s: %s is more than %s whips (up to %s); make %d charges of %s"
        .formatted(
            stage,
            Display.mass(total),
            vessel,
            Display.mass(whips.high()),
            charges,
            Display.mass(each()));
  }
}
