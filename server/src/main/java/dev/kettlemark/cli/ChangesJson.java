package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import dev.kettlemark.comparison.FigureChange;
import dev.kettlemark.comparison.ItemChange;
import dev.kettlemark.comparison.KeptDose;
import dev.kettlemark.comparison.LibraryComparison;
import dev.kettlemark.comparison.LineChange;
import dev.kettlemark.comparison.SectionEdit;
import dev.kettlemark.comparison.Shown;
import dev.kettlemark.comparison.Told;
import java.util.Collection;
import java.util.Locale;
import java.util.function.Function;

/** A {@link LibraryComparison} for other programs: as shown, and in full where it is a number. */
final class ChangesJson {

  private ChangesJson() {}

  static JsonObject of(String from, String to, LibraryComparison comparison) {
    JsonObject json = new JsonObject();
    json.addProperty("from", from);
    json.addProperty("to", to);
    json.add("edits", array(comparison.edits(), ChangesJson::edit));
    json.add("items", array(comparison.items(), ChangesJson::item));
    json.add("doses", array(comparison.doses(), ChangesJson::dose));
    return json;
  }

  private static JsonObject edit(SectionEdit edit) {
    JsonObject json = new JsonObject();
    json.addProperty("kind", edit.word());
    json.addProperty("name", edit.name());
    json.addProperty("how", word(edit.how()));
    json.add("lines", array(edit.lines(), ChangesJson::line));
    return json;
  }

  private static JsonObject line(LineChange change) {
    JsonObject json = new JsonObject();
    json.addProperty("added", change.added());
    json.addProperty("line", change.line());
    return json;
  }

  private static JsonObject item(ItemChange item) {
    JsonObject json = new JsonObject();
    json.addProperty("kind", item.word());
    json.addProperty("name", item.name());
    json.addProperty("how", word(item.how()));
    json.add("causes", array(item.causes(), JsonPrimitive::new));
    json.add("figures", array(item.figures(), ChangesJson::figure));
    json.add("newFindings", array(item.found(), ChangesJson::finding));
    json.add("goneFindings", array(item.mended(), ChangesJson::finding));
    return json;
  }

  private static JsonObject figure(FigureChange change) {
    JsonObject json = new JsonObject();
    json.addProperty("group", word(change.figure().group()));
    json.addProperty("name", change.figure().name());
    json.add("before", shown(change.before()));
    json.add("after", shown(change.after()));
    return json;
  }

  private static JsonObject shown(Shown shown) {
    JsonObject json = new JsonObject();
    json.addProperty("text", shown.text());
    shown.numbers().forEach(json::addProperty);
    if (!shown.because().isEmpty()) {
      json.addProperty("unknownBecause", shown.because());
    }
    return json;
  }

  private static JsonObject finding(Told told) {
    JsonObject json = new JsonObject();
    json.addProperty("severity", told.severity());
    json.addProperty("rule", told.rule());
    json.addProperty("message", told.message());
    return json;
  }

  private static JsonObject dose(KeptDose dose) {
    JsonObject json = new JsonObject();
    json.addProperty("formula", dose.formula());
    json.addProperty("stage", dose.stage());
    json.addProperty("ingredient", dose.ingredient());
    json.addProperty("measure", dose.measure());
    json.add("statedBefore", shown(dose.stated().before()));
    json.add("statedAfter", shown(dose.stated().after()));
    json.addProperty("percentBefore", dose.before().percent());
    json.addProperty("percentNow", dose.now().percent());
    json.addProperty("percentToKeep", dose.kept().percent());
    dose.keptGrams().ifPresent(mass -> json.addProperty("gramsToKeep", mass.grams()));
    dose.otherwise().ifPresent(other -> json.addProperty("percentByLinearRule", other.percent()));
    return json;
  }

  private static String word(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }

  private static <T> JsonArray array(
      Collection<T> things, Function<? super T, ? extends JsonElement> json) {
    JsonArray array = new JsonArray();
    things.forEach(thing -> array.add(json.apply(thing)));
    return array;
  }
}
