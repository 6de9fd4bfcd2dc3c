package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import dev.kettlemark.analysis.AirReading;
import dev.kettlemark.analysis.Correction;
import dev.kettlemark.analysis.HouseCorrections;
import dev.kettlemark.analysis.Prediction;
import dev.kettlemark.analysis.ProbeReading;
import dev.kettlemark.analysis.TrialComparison;
import dev.kettlemark.analysis.TrialReading;
import dev.kettlemark.features.TrialReport;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** A {@link TrialReport} for other programs: full figures; what is unknown is left out. */
final class TrialsJson {

  private TrialsJson() {}

  static JsonObject of(TrialReport report) {
    JsonObject json = new JsonObject();
    json.add("trials", array(report.trials(), TrialsJson::trial));
    json.add("houses", array(report.houses(), TrialsJson::house));
    return json;
  }

  private static JsonObject trial(TrialReport.Item item) {
    JsonObject json = new JsonObject();
    json.addProperty("name", item.trial().name().value());
    json.addProperty("formula", item.trial().formula().map(Located::value).orElse(null));
    json.addProperty("day", item.trial().day().map(Object::toString).orElse(null));
    json.addProperty("house", item.trial().house().map(Located::value).orElse(null));
    item.compared().ifPresent(compared -> addComparison(json, compared));
    return json;
  }

  private static void addComparison(JsonObject json, TrialComparison compared) {
    json.addProperty("batchGrams", compared.process().charge().mass().grams());
    json.addProperty("olderVersion", compared.isOlder());
    json.addProperty("otherwiseThanWritten", !compared.changes().isEmpty());
    json.add("readings", array(compared.readings(), TrialsJson::reading));
    json.add("thermometers", array(compared.probes(), TrialsJson::probe));
    json.add("air", array(compared.airs(), TrialsJson::air));
  }

  private static JsonObject reading(TrialReading reading) {
    JsonObject json = new JsonObject();
    json.addProperty("of", reading.measurement().subject());
    json.addProperty("quantity", reading.measurement().quantity().word());
    json.addProperty("unit", reading.measurement().quantity().unit());
    json.addProperty("measured", reading.measurement().value());
    json.add("predicted", figure(reading.predicted().map(Prediction::best)));
    json.add(
        "low", figure(reading.predicted().map(prediction -> prediction.band().low())));
    json.add(
        "high", figure(reading.predicted().map(prediction -> prediction.band().high())));
    json.add("difference", figure(reading.difference()));
    json.addProperty("verdict", reading.verdict().name().toLowerCase(Locale.ROOT));
    json.add(
        "unknownBecause",
        reading
            .predicted()
            .<JsonElement>fold(
                known -> JsonNull.INSTANCE, why -> new JsonPrimitive(why.because())));
    return json;
  }

  private static JsonObject probe(ProbeReading probe) {
    JsonObject json = new JsonObject();
    json.addProperty("stage", probe.end().stage().orElse(null));
    json.addProperty("readCelsius", probe.end().value());
    json.add("boilsCelsius", figure(probe.boilsAt().map(boils -> boils.celsius())));
    json.add("waterPercentByWeight", figure(probe.waterByWeight().map(Ratio::percent)));
    json.add("waterPercentByProbe", figure(probe.waterByProbe().map(Ratio::percent)));
    return json;
  }

  private static JsonObject air(AirReading air) {
    JsonObject json = new JsonObject();
    json.addProperty("stage", air.stage());
    json.addProperty("gramsPerMillilitre", air.density().value());
    json.add(
        "gramsPerMillilitreWithoutAir",
        figure(air.withoutAir().map(density -> density.gramsPerMillilitre())));
    json.add("overrunPercent", figure(air.overrun().map(Ratio::percent)));
    return json;
  }

  private static JsonObject house(TrialReport.HouseItem house) {
    JsonObject json = new JsonObject();
    json.addProperty("name", house.name().orElse(null));
    json.add("corrections", corrections(house.kitchen()));
    JsonObject formulas = new JsonObject();
    house.formulas().forEach((name, own) -> formulas.add(name, corrections(own)));
    json.add("formulas", formulas);
    return json;
  }

  private static JsonArray corrections(HouseCorrections corrections) {
    return array(corrections.corrections(), TrialsJson::correction);
  }

  private static JsonObject correction(Correction correction) {
    JsonObject json = new JsonObject();
    json.addProperty("quantity", correction.quantity().title());
    json.addProperty("unit", correction.quantity().unit());
    json.add("trials", array(correction.trials(), JsonPrimitive::new));
    json.addProperty("readings", correction.readings());
    json.addProperty("mean", correction.mean());
    json.add("spread", figure(correction.spread()));
    json.add("low", figure(correction.band().map(Band::low)));
    json.add("high", figure(correction.band().map(Band::high)));
    json.addProperty("enough", correction.isEnough());
    return json;
  }

  private static <T> JsonArray array(
      Collection<T> things, Function<? super T, ? extends JsonElement> json) {
    JsonArray array = new JsonArray();
    things.forEach(thing -> array.add(json.apply(thing)));
    return array;
  }

  private static JsonElement figure(Outcome<Double> outcome) {
    return figure(outcome.toOptional());
  }

  private static JsonElement figure(Optional<Double> figure) {
    return figure.<JsonElement>map(JsonPrimitive::new).orElse(JsonNull.INSTANCE);
  }
}
