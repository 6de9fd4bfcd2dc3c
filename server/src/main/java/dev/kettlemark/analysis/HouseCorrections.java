package dev.kettlemark.analysis;

import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.HeatBalance;
import dev.kettlemark.science.Parcel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the trials of one kitchen say of the model, beside its predictions and never in them.
 *
 * @param corrections those of which at least one trial tells, in the order of {@link CorrectionQuantity}
 */
public record HouseCorrections(List<Correction> corrections) {

  /** A mass whose temperature is known no closer than this in kelvin says nothing of lost heat. */
  private static final double CLOSE_ENOUGH = 10;

  public HouseCorrections {
    corrections = List.copyOf(corrections);
  }

  /** The corrections that a set of trials gives; trials that are no evidence are left out. */
  public static HouseCorrections of(List<TrialComparison> trials) {
    Map<CorrectionQuantity, Map<String, List<Double>>> found =
        new EnumMap<>(CorrectionQuantity.class);
    for (TrialComparison trial : trials) {
      if (trial.isEvidence()) {
        String name = trial.trial().name().value();
        for (CorrectionQuantity quantity : CorrectionQuantity.values()) {
          List<Double> values = values(quantity, trial);
          if (!values.isEmpty()) {
            found.computeIfAbsent(quantity, q -> new LinkedHashMap<>()).put(name, values);
          }
        }
      }
    }
    return new HouseCorrections(found.entrySet().stream()
        .map(entry -> Correction.of(entry.getKey(), entry.getValue()))
        .toList());
  }

  /**
   * What is known of the kitchen in which a formula is computed: of the formula itself from its own
   * trials, of the kitchen from all of its trials.
   */
  public static HouseCorrections beside(Snapshot snapshot, ComputedFormula formula) {
    List<TrialComparison> here = Trials.all(snapshot).stream()
        .filter(trial -> houseOf(trial.formula().kitchen()).equals(houseOf(formula.kitchen())))
        .toList();
    String name = formula.formula().name().value();
    List<TrialComparison> own = here.stream()
        .filter(trial -> trial.formula().formula().name().value().equals(name))
        .toList();
    return new HouseCorrections(Stream.concat(
            of(here).corrections().stream().filter(c -> !c.quantity().isPerFormula()),
            of(own).corrections().stream().filter(c -> c.quantity().isPerFormula()))
        .toList());
  }

  /** The correction of a quantity, whether or not there are enough trials for it. */
  public Optional<Correction> of(CorrectionQuantity quantity) {
    return corrections.stream().filter(one -> one.quantity() == quantity).findFirst();
  }

  private static Optional<String> houseOf(Kitchen kitchen) {
    return kitchen.house().map(house -> house.name().value());
  }

  private static List<Double> values(CorrectionQuantity quantity, TrialComparison trial) {
    return switch (quantity) {
      case WATER_LEFT ->
        known(trial.probes().stream().map(probe -> probe.moreWater().map(Ratio::percent)));
      case PROBE ->
        known(
            trial.probes().stream().map(probe -> probe.probeError().map(error -> error.celsius())));
      case HEAT_TAKEN ->
        known(ofQuantity(trial, TrialQuantity.TEMPERATURE)
            .map(reading -> heatTaken(trial, reading.measurement()).map(Ratio::percent)));
      case MIX_TEMPERATURE -> differences(trial, TrialQuantity.TEMPERATURE);
      case ACTIVITY -> differences(trial, TrialQuantity.ACTIVITY);
      case DENSITY -> differences(trial, TrialQuantity.DENSITY);
      case OVERRUN ->
        known(trial.airs().stream()
            .filter(air -> trial
                .process()
                .stage(air.stage())
                .filter(stage -> stage.left().isAerated())
                .isPresent())
            .map(air -> air.overrun().map(Ratio::percent)));
    };
  }

  private static List<Double> differences(TrialComparison trial, TrialQuantity quantity) {
    return known(ofQuantity(trial, quantity).map(TrialReading::difference));
  }

  private static Stream<TrialReading> ofQuantity(TrialComparison trial, TrialQuantity quantity) {
    return trial.readings().stream()
        .filter(reading -> reading.measurement().quantity() == quantity);
  }

  private static List<Double> known(Stream<Outcome<Double>> outcomes) {
    return outcomes.flatMap(outcome -> outcome.toOptional().stream()).toList();
  }

  /** The share of heat lost at the step after which a temperature was read. */
  static Outcome<Ratio> heatTaken(TrialComparison trial, Measurement read) {
    Optional<StageResult> stage = read.stage().flatMap(trial.process()::stage);
    Optional<StepResult> step = stage
        .flatMap(
            found -> TrialSteps.named(found, read.step()).or(() -> TrialSteps.lastMeeting(found)))
        .filter(found -> found.merged().isPresent());
    List<Parcel> parcels = new ArrayList<>();
    for (StageParcel parcel : step.map(StepResult::before).orElse(List.of())) {
      Outcome<Portion> portion = parcel.portion();
      if (!portion.isKnown() || !isClose(parcel.temperature())) {
        return Outcome.unknown(
            Reason.DEPENDS_ON_UNKNOWN, "how warm each mass was before is not known closely enough");
      }
      portion.ifKnown(known -> parcels.add(new Parcel(known, parcel.temperature())));
    }
    return parcels.size() < 2
        ? Outcome.unknown(Reason.NOT_MODELLED, "no masses of different heat met there")
        : HeatBalance.lostShare(parcels, Temperature.ofCelsius(read.value()));
  }

  private static boolean isClose(Band<Temperature> band) {
    return band.high().kelvin() - band.low().kelvin() <= CLOSE_ENOUGH;
  }
}
