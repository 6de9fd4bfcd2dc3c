package dev.kettlemark.analysis;

import dev.kettlemark.model.Statement;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;

/**
 * What a step did.
 *
 * @param step the step
 * @param before what it acted on
 * @param after what that became
 * @param evaporated water and spirit that left as vapour
 * @param merged the temperature right after parcels of different heat met; empty where none did
 * @param derivation how the figures came about; empty where nothing was computed
 */
public record StepResult(
    Statement step,
    List<StageParcel> before,
    List<StageParcel> after,
    Mass evaporated,
    Optional<Band<Temperature>> merged,
    Optional<Derivation> derivation) {

  public StepResult {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  StepResult leaving(List<StageParcel> others) {
    return new StepResult(step, before, others, evaporated, merged, derivation);
  }
}
