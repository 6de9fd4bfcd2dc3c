package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.Foam;
import dev.kettlemark.science.FoodDensity;
import java.util.List;
import java.util.Optional;

/**
 * A measured density turned into the air that the mass holds.
 *
 * @param stage the mass
 * @param density as measured
 * @param withoutAir the density of what it is made of
 * @param overrun air by volume of the mass without air
 * @param measuredOverrun what the trial says of the overrun itself
 */
public record AirReading(
    String stage,
    Measurement density,
    Outcome<Density> withoutAir,
    Outcome<Ratio> overrun,
    Optional<Measurement> measuredOverrun) {

  /** A cup is filled and weighed at about this temperature; common practice, no source. */
  static final Temperature WEIGHED_AT = Temperature.ofCelsius(20);

  static Optional<AirReading> of(StageResult stage, List<Measurement> measured) {
    return first(TrialQuantity.DENSITY, stage, measured)
        .filter(density -> density.value() > 0)
        .map(density -> {
          Outcome<Density> withoutAir = withoutAir(stage, density.at());
          return new AirReading(
              stage.name(),
              density,
              withoutAir,
              withoutAir.flatMap(
                  solid -> Foam.overrun(solid, Density.ofGramsPerMillilitre(density.value()))),
              first(TrialQuantity.OVERRUN, stage, measured));
        });
  }

  /** The density of what a stage leaves, had it no air. */
  public static Outcome<Density> withoutAir(StageResult stage, Optional<Temperature> at) {
    return stage
        .left()
        .composition()
        .flatMap(composition -> FoodDensity.of(composition, at.orElse(WEIGHED_AT)));
  }

  private static Optional<Measurement> first(
      TrialQuantity quantity, StageResult stage, List<Measurement> measured) {
    return measured.stream()
        .filter(one -> one.quantity() == quantity)
        .filter(one -> one.stage().filter(stage.name()::equals).isPresent())
        .findFirst();
  }
}
