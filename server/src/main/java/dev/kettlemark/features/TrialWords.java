package dev.kettlemark.features;

import dev.kettlemark.analysis.AirReading;
import dev.kettlemark.analysis.Correction;
import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.analysis.Prediction;
import dev.kettlemark.analysis.ProbeReading;
import dev.kettlemark.analysis.TrialComparison;
import dev.kettlemark.analysis.TrialQuantity;
import dev.kettlemark.analysis.TrialReading;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Trial;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How trials and what follows from them are told, in the editor and in the terminal alike. */
final class TrialWords {

  private TrialWords() {}

  /** {@code T-014 of heather-nougat on 2026-03-09 at gannet-slip}. */
  static String heading(Trial trial) {
    return trial.name().value()
        + trial.formula().map(formula -> " of " + formula.value()).orElse("")
        + trial.day().map(day -> " on " + day).orElse("")
        + trial.house().map(house -> " at " + house.value()).orElse("");
  }

  /** The batch, and the version of the formula then and now. */
  static String circumstances(TrialComparison compared) {
    List<String> told = new ArrayList<>();
    told.add("batch of " + Display.batch(compared.process().charge().mass()));
    Optional<String> now = compared.current().map(FormulaVersion::shown);
    now.ifPresent(version -> told.add(
        compared.isOlder()
            ? "made before " + version + ", which is compared here"
            : "made by " + version));
    if (!compared.changes().isEmpty()) {
      told.add("made otherwise than written");
    }
    return String.join(", ", told);
  }

  /** {@code 806.0 ± 8.1}, or {@code unknown}. */
  static String predicted(TrialReading reading) {
    TrialQuantity quantity = reading.measurement().quantity();
    return reading.predicted().map(prediction -> figure(quantity, prediction)).orElse("unknown");
  }

  private static String figure(TrialQuantity quantity, Prediction prediction) {
    double half = Math.max(
        prediction.band().high() - prediction.best(),
        prediction.best() - prediction.band().low());
    String slack = quantity.figure(half);
    return quantity.figure(prediction.best())
        + (Double.parseDouble(slack) == 0 ? "" : " ± " + slack);
  }

  static String difference(TrialReading reading) {
    TrialQuantity quantity = reading.measurement().quantity();
    return reading.difference().map(quantity::difference).orElse("");
  }

  /** What else is to be said of a trial, one sentence each. */
  static List<String> notes(TrialComparison compared) {
    List<String> notes = new ArrayList<>();
    compared.readings().forEach(reading -> note(reading).ifPresent(notes::add));
    compared.probes().forEach(probe -> notes.add(probe(probe)));
    compared.airs().forEach(air -> notes.add(air(air)));
    return notes;
  }

  /** Why a reading is not comparable, or what the formula itself asks for. */
  static Optional<String> note(TrialReading reading) {
    String subject = reading.measurement().subject();
    Optional<String> unknown = reading
        .predicted()
        .fold(
            known -> Optional.empty(),
            why -> Optional.of(subject + ": no prediction, " + why.because()));
    Optional<String> asked = reading.wanted().map(band -> {
      TrialQuantity quantity = reading.measurement().quantity();
      return "the formula asks for " + quantity.figure(band.low()) + "–"
          + quantity.shown(band.high())
          + (reading.isOutsideWanted() ? ", and this lies outside" : ", and this lies within");
    });
    boolean isNews = unknown.isPresent() || reading.isOutsideWanted();
    return isNews
        ? Optional.of(unknown
                .map(told -> told + asked.map(what -> "; " + what).orElse(""))
                .orElseGet(() -> subject + ": " + asked.orElse(""))
            + ".")
        : Optional.empty();
  }

  /** A thermometer against the scale. */
  static String probe(ProbeReading probe) {
    String stage = probe.end().stage().orElse("");
    return probe
        .boilsAt()
        .fold(
            boils -> stage + ": " + probe.weight().shown() + " leave "
                + probe.waterByWeight().map(Display::estimate).orElse("an unknown share")
                + " water, which boils at " + Display.celsius(boils) + "; the probe read "
                + probe.end().shown() + ", " + high(probe, boils)
                + (isWithinModel(probe) ? ", within the error of the model." : "."),
            why -> stage + ": thermometer and scale cannot be compared, " + why.because() + ".");
  }

  private static boolean isWithinModel(ProbeReading probe) {
    return probe
        .moreWater()
        .map(more -> Math.abs(more.percent()) <= ProbeReading.MODEL_ERROR.percent())
        .orElse(false);
  }

  private static String high(ProbeReading probe, Temperature boils) {
    double error = Temperature.ofCelsius(probe.end().value()).minus(boils).celsius();
    String size = Display.fixed(Math.abs(error), 1);
    return size.equals("0.0") ? "the same" : size + " °C " + (error > 0 ? "more" : "less");
  }

  static String air(AirReading air) {
    return air.overrun()
        .fold(
            overrun -> air.stage() + ": " + air.density().shown() + " against "
                + air.withoutAir()
                    .map(solid -> Display.fixed(solid.gramsPerMillilitre(), 2))
                    .orElse("?")
                + " g/mL without air is an overrun of "
                + Display.fixed(overrun.percent(), 0) + " %.",
            why -> air.stage() + ": the air in it cannot be told, " + why.because() + ".");
  }

  /** The band of a mean, or {@code too few to correct (n = 2)}. */
  static String trust(Correction correction) {
    if (!correction.isEnough()) {
      return "too few to correct (n = " + correction.count() + ")";
    }
    String band = correction
        .band()
        .map(ends -> correction.quantity().figure(ends.low()) + " to "
            + correction.quantity().figure(ends.high()))
        .orElse("");
    return band + (correction.isWithinScatter() ? ", may be scatter" : "");
  }

  static String trials(int count) {
    return count == 1 ? "1 trial" : count + " trials";
  }

  static Optional<String> formula(Trial trial) {
    return trial.formula().map(Located::value);
  }
}
