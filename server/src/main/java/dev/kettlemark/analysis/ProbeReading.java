package dev.kettlemark.analysis;

import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import dev.kettlemark.science.SyrupBoiling;
import java.util.List;
import java.util.Optional;

/**
 * A thermometer held against the scale.
 *
 * <p>Solids do not boil away, so the cooked weight tells how much water is left, and the water tells at
 * which temperature the mass boils. Where the probe says otherwise, the probe is off, or the weight is:
 * a residue in the pan looks like a probe that reads too low, and a pan weighed with its contents like
 * one that reads too high. Which of the two it is, one trial cannot tell.
 *
 * @param end what the probe read at the end of the cook
 * @param weight what the scale read afterwards
 * @param waterByWeight the share of water by the mass balance
 * @param waterByProbe the share of water by the boiling model at the temperature read
 * @param boilsAt the temperature at which a mass with the water of the mass balance boils
 */
public record ProbeReading(
    Measurement end,
    Measurement weight,
    Outcome<Ratio> waterByWeight,
    Outcome<Ratio> waterByProbe,
    Outcome<Temperature> boilsAt) {

  /** Expected error of the water left, see {@link SyrupBoiling}. */
  public static final Ratio MODEL_ERROR = Ratio.ofPercent(1);

  /** The reading of a stage of which both the end and the weight were measured. */
  static Optional<ProbeReading> of(
      StageResult stage, List<Measurement> measured, Pressure pressure) {
    Optional<Measurement> end = of(TrialQuantity.END, stage, measured);
    Optional<Measurement> weight = of(TrialQuantity.WEIGHT, stage, measured);
    return end.isPresent() && weight.isPresent() && CookedStage.lastCook(stage).isPresent()
        ? Optional.of(of(stage, end.get(), weight.get(), pressure))
        : Optional.empty();
  }

  private static ProbeReading of(
      StageResult stage, Measurement end, Measurement weight, Pressure pressure) {
    Temperature read = Temperature.ofCelsius(end.value());
    Outcome<Ratio> byWeight = waterAt(stage, Mass.ofGrams(weight.value()));
    Outcome<Composition> left = stage.left().composition();
    return new ProbeReading(
        end,
        weight,
        byWeight,
        left.flatMap(composition -> Boiling.waterLeft(composition, read, pressure)),
        Outcome.both(left, byWeight, Composition::withWaterFraction)
            .flatMap(syrup -> SyrupBoiling.boilingPoint(syrup, pressure)));
  }

  /** The share of water that a stage holds if it weighs so much: its solids stay what they were. */
  static Outcome<Ratio> waterAt(StageResult stage, Mass weight) {
    return stage.left().portion().flatMap(portion -> {
      Mass solids = portion.mass().times(portion.composition().solids());
      boolean isPossible = solids.grams() > 0
          && solids.compareTo(weight) <= 0
          && CookedStage.putIn(stage).map(most -> weight.compareTo(most) <= 0).orElse(true);
      return isPossible
          ? Outcome.known(weight.minus(solids).dividedBy(weight))
          : Outcome.unknown(
              Reason.CONTRADICTION,
              "%.0f g does not lie between the solids of the stage and what was put in",
              weight.grams());
    });
  }

  /** How much too high the probe reads, if the scale is right. */
  public Outcome<TemperatureDifference> probeError() {
    return boilsAt.map(boils -> Temperature.ofCelsius(end.value()).minus(boils));
  }

  /** How much more water is left than the boiling model says, if the probe is right. */
  public Outcome<Ratio> moreWater() {
    return Outcome.both(waterByWeight, waterByProbe, Ratio::minus);
  }

  private static Optional<Measurement> of(
      TrialQuantity quantity, StageResult stage, List<Measurement> measured) {
    return measured.stream()
        .filter(one -> one.quantity() == quantity)
        .filter(one -> one.stage().filter(stage.name()::equals).isPresent())
        .findFirst();
  }
}
