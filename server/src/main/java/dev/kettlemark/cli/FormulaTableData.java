package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import dev.kettlemark.analysis.CookedWeight;
import dev.kettlemark.features.FormulaTable;
import dev.kettlemark.features.FormulaTable.Row;
import dev.kettlemark.features.FormulaTable.StageRows;
import dev.kettlemark.features.FormulaTable.Totals;
import dev.kettlemark.model.State;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A {@link FormulaTable} for other programs: JSON with full figures, or CSV for a spreadsheet. */
final class FormulaTableData {

  private static final List<String> COLUMNS = List.of(
      "stage",
      "kind",
      "name",
      "written",
      "percent_of_charge",
      "grams",
      "water_percent",
      "celsius_low",
      "celsius_high",
      "states");

  private FormulaTableData() {}

  /** Figures in the units their names say; null where a figure is unknown. */
  static JsonObject json(FormulaTable table) {
    JsonObject json = new JsonObject();
    json.addProperty("name", table.name());
    json.addProperty("title", table.title().orElse(null));
    json.addProperty("percentOf", table.basis());
    json.addProperty("batchGiven", !table.nominal());
    json.addProperty("altitudeMetres", table.kitchen().altitudeMetres());
    json.addProperty("pressureKilopascals", table.kitchen().pressure().kilopascals());
    JsonArray stages = new JsonArray();
    table.stages().forEach(stage -> stages.add(stage(stage)));
    json.add("stages", stages);
    json.add("totals", totals(table.totals()));
    return json;
  }

  /** One line for each amount, each taken stage, and what each stage leaves; headings first. */
  static List<String> csv(FormulaTable table) {
    List<String> lines = new ArrayList<>();
    lines.add(String.join(",", COLUMNS));
    for (StageRows stage : table.stages()) {
      for (Row row : stage.rows()) {
        lines.add(line(
            stage.name(),
            row.taken() ? "taken" : "weighed",
            row.name(),
            row.written(),
            row.share().flatMap(Outcome::toOptional).map(share -> figure(share.percent())),
            grams(row.mass())));
      }
      lines.add(line(
          stage.name(),
          "left",
          stage.name(),
          "",
          Optional.empty(),
          grams(stage.left()),
          stage.water().toOptional().map(water -> figure(water.percent())).orElse(""),
          figure(stage.temperature().low().celsius()),
          figure(stage.temperature().high().celsius()),
          stage.stateWords()));
    }
    return lines;
  }

  private static JsonObject stage(StageRows stage) {
    JsonObject json = new JsonObject();
    json.addProperty("name", stage.name());
    json.addProperty("title", stage.title().orElse(null));
    json.addProperty("vessel", stage.vessel().orElse(null));
    JsonArray rows = new JsonArray();
    stage.rows().forEach(row -> rows.add(row(row)));
    json.add("rows", rows);
    json.addProperty("weighedGrams", stage.weighed().grams());
    json.addProperty("percentOfCharge", stage.share().percent());
    json.addProperty("chargedGrams", stage.charged().grams());
    json.addProperty("boiledAwayGrams", stage.evaporated().grams());
    json.add("leftGrams", number(stage.left().map(Mass::grams)));
    json.addProperty("leftSlackGrams", stage.slack().grams());
    json.add("waterPercent", number(stage.water().map(Ratio::percent)));
    json.addProperty("celsiusLow", stage.temperature().low().celsius());
    json.addProperty("celsiusHigh", stage.temperature().high().celsius());
    JsonArray states = new JsonArray();
    stage.states().stream().map(State::word).forEach(states::add);
    json.add("states", states);
    json.add("figures", FigureData.json(stage.figures()));
    return json;
  }

  private static JsonObject row(Row row) {
    JsonObject json = new JsonObject();
    json.addProperty("kind", row.taken() ? "taken" : "weighed");
    json.addProperty("name", row.name());
    json.addProperty("written", row.written());
    json.add(
        "percentOfCharge",
        row.share().map(share -> number(share.map(Ratio::percent))).orElse(JsonNull.INSTANCE));
    json.add("grams", number(row.mass().map(Mass::grams)));
    return json;
  }

  private static JsonObject totals(Totals totals) {
    JsonObject json = new JsonObject();
    json.addProperty("chargeGrams", totals.charge().grams());
    json.addProperty("percentOfCharge", totals.share().percent());
    json.addProperty("boiledAwayGrams", totals.evaporated().grams());
    json.add("cookedGrams", number(totals.cooked().map(CookedWeight::mass).map(Mass::grams)));
    json.add("cookedSlackGrams", number(totals.cooked().map(CookedWeight::slack).map(Mass::grams)));
    json.add("yieldPercent", number(totals.yieldShare().map(Ratio::percent)));
    json.add("yieldPercentLow", number(totals.yieldBand().map(Band::low).map(Ratio::percent)));
    json.add("yieldPercentHigh", number(totals.yieldBand().map(Band::high).map(Ratio::percent)));
    json.add("waterPercent", number(totals.water().map(Ratio::percent)));
    json.add("figures", totals.figures().fold(FigureData::json, unknown -> JsonNull.INSTANCE));
    return json;
  }

  private static JsonElement number(Outcome<Double> figure) {
    return figure.fold(JsonPrimitive::new, unknown -> JsonNull.INSTANCE);
  }

  private static String grams(Outcome<Mass> mass) {
    return mass.toOptional().map(known -> figure(known.grams())).orElse("");
  }

  private static String figure(double value) {
    return Display.trimmed(value, 4);
  }

  private static String line(
      String stage,
      String kind,
      String name,
      String written,
      Optional<String> percent,
      String... rest) {
    Stream<String> first = Stream.of(stage, kind, name, written, percent.orElse(""));
    List<String> cells =
        Stream.concat(first, Stream.of(rest)).map(FormulaTableData::quoted).toList();
    return cells.stream().collect(Collectors.joining(","))
        + ",".repeat(COLUMNS.size() - cells.size());
  }

  private static String quoted(String cell) {
    return cell.matches(".*[,\"\r\n].*") ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
  }
}
