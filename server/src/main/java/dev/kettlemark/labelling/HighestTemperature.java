package dev.kettlemark.labelling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Temperature;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** How warm a material gets on its way through the stages. */
public final class HighestTemperature {

  private HighestTemperature() {}

  /**
   * The warmest band, by its cold end, that any mass holding the material reaches.
   *
   * @return empty where no step works on it
   */
  public static Optional<Band<Temperature>> of(ComputedFormula formula, String material) {
    Set<String> carriers = new HashSet<>(Set.of(material));
    Optional<Band<Temperature>> highest = Optional.empty();
    for (StageResult stage : formula.process().stages()) {
      boolean holds = Stream.concat(
              stage.stage().amounts().stream().map(AmountLine::ingredient),
              stage.stage().takes().stream().map(TakeLine::stage))
          .anyMatch(name -> carriers.contains(name.value()));
      if (!holds) {
        continue;
      }
      for (StepResult step : stage.steps()) {
        highest = warmer(
            highest,
            step.after().stream()
                .filter(parcel -> carriers.stream().anyMatch(parcel::holds))
                .map(StageParcel::temperature));
      }
      carriers.add(stage.name());
    }
    return highest;
  }

  private static Optional<Band<Temperature>> warmer(
      Optional<Band<Temperature>> known, Stream<Band<Temperature>> others) {
    return Stream.concat(known.stream(), others)
        .reduce((one, other) -> one.low().compareTo(other.low()) >= 0 ? one : other);
  }
}
