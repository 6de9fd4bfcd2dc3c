package dev.kettlemark.analysis;

import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import java.util.List;

/**
 * What a stage made of what went into it.
 *
 * @param stage the stage
 * @param weighed what was weighed in
 * @param charged what of the formula's charge is in it, taken parts included
 * @param taken what it took of earlier stages, as they left it
 * @param steps what each step did
 * @param evaporated what left as vapour
 * @param left the mass it leaves, all parcels together
 * @param parcels the same before they are put together: more than one where no step joined them
 */
public record StageResult(
    Stage stage,
    Mass weighed,
    Mass charged,
    Outcome<Mass> taken,
    List<StepResult> steps,
    Mass evaporated,
    StageParcel left,
    List<StageParcel> parcels) {

  public StageResult {
    steps = List.copyOf(steps);
    parcels = List.copyOf(parcels);
  }

  /** The name by which later stages take it. */
  public String name() {
    return stage.name().value();
  }
}
