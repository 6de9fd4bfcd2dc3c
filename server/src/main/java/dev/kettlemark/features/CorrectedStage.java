package dev.kettlemark.features;

import dev.kettlemark.analysis.AirReading;
import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.CookedStage;
import dev.kettlemark.analysis.Correction;
import dev.kettlemark.analysis.CorrectionQuantity;
import dev.kettlemark.analysis.HouseCorrections;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.ProbeReading;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.Foam;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the trials of the kitchen would make of a stage's predictions.
 *
 * <p>A correction is told beside the prediction that it corrects; nothing computes with it.
 */
final class CorrectedStage {

  private final StageResult stage;
  private final Kitchen kitchen;
  private final HouseCorrections corrections;
  private final boolean hasWeights;

  /**
   * Prepares the words.
   *
   * @param hasWeights whether the masses are those of a real batch
   */
  CorrectedStage(
      StageResult stage, Kitchen kitchen, HouseCorrections corrections, boolean hasWeights) {
    this.stage = stage;
    this.kitchen = kitchen;
    this.corrections = corrections;
    this.hasWeights = hasWeights;
  }

  /** One list item for each correction that speaks of this stage; none where no trial does. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    Optional<StepResult> cook = CookedStage.lastCook(stage);
    if (cook.isPresent()) {
      add(lines, CorrectionQuantity.WATER_LEFT, this::water);
      if (isMoreThanTheModelsError()) {
        add(lines, CorrectionQuantity.PROBE, correction -> probe(cook.get(), correction));
      }
    }
    meeting()
        .ifPresent(band ->
            add(lines, CorrectionQuantity.MIX_TEMPERATURE, correction -> mixed(band, correction)));
    if (stage.left().isAerated()) {
      add(lines, CorrectionQuantity.OVERRUN, this::density);
    }
    if (cook.isEmpty()) {
      add(lines, CorrectionQuantity.ACTIVITY, this::activity);
    }
    return lines;
  }

  /** A smaller gap may be the boiling model's, and nobody should mistrust a good thermometer for it. */
  private boolean isMoreThanTheModelsError() {
    return corrections
        .of(CorrectionQuantity.WATER_LEFT)
        .filter(gap -> Math.abs(gap.mean()) > ProbeReading.MODEL_ERROR.percent())
        .isPresent();
  }

  /** What a correction makes of a prediction. */
  private interface Applied {
    Optional<String> to(Correction correction);
  }

  private void add(List<String> lines, CorrectionQuantity quantity, Applied applied) {
    corrections
        .of(quantity)
        .flatMap(correction -> correction.isEnough()
            ? applied.to(correction).map(result -> said(correction) + " → " + result)
            : Optional.of(said(correction)))
        .ifPresent(line -> lines.add("- " + line + "."));
  }

  private static String said(Correction correction) {
    String value =
        correction.quantity().title() + " " + correction.quantity().shown(correction.mean());
    return correction.isEnough()
        ? "House correction from " + TrialWords.trials(correction.count()) + ": " + value
            + (correction.isWithinScatter() ? " (may be scatter)" : "")
        : "Measured in " + TrialWords.trials(correction.count()) + ": " + value + "; "
            + TrialWords.trust(correction);
  }

  private Optional<String> water(Correction correction) {
    return stage.left().portion().toOptional().map(portion -> {
      Ratio water =
          Ratio.ofPercent(Math.max(0, portion.composition().water().percent() + correction.mean()));
      Mass solids = portion.mass().times(portion.composition().solids());
      String weight = hasWeights
          ? ", " + Display.estimate(solids.times(1 / water.complement().fraction()))
          : "";
      return "water " + Display.estimate(water) + weight;
    });
  }

  /** The other reading of the same gap; never both at once. */
  private static Optional<String> probe(StepResult cook, Correction correction) {
    return Boiling.target(cook.step())
        .map(target -> "if it is the probe, cook until it shows "
            + Display.fixed(middle(target) + correction.mean(), 1) + " °C");
  }

  private Optional<Band<Temperature>> meeting() {
    return stage.steps().stream().flatMap(step -> step.merged().stream()).findFirst();
  }

  private static Optional<String> mixed(Band<Temperature> band, Correction correction) {
    return Optional.of(Display.fixed(middle(band) + correction.mean(), 0) + " °C");
  }

  private Optional<String> density(Correction correction) {
    return AirReading.withoutAir(stage, Optional.empty())
        .map(solid -> Foam.density(solid, Ratio.ofPercent(Math.max(0, correction.mean()))))
        .map(foam -> Display.fixed(foam.gramsPerMillilitre(), 2) + " g/mL")
        .toOptional();
  }

  private Optional<String> activity(Correction correction) {
    return MassFigures.of(stage.left(), kitchen)
        .waterActivity()
        .map(band -> "water activity "
            + Display.fixed(
                (band.low().fraction() + band.high().fraction()) / 2 + correction.mean(), 2))
        .toOptional();
  }

  private static double middle(Band<Temperature> band) {
    return (band.low().celsius() + band.high().celsius()) / 2;
  }
}
