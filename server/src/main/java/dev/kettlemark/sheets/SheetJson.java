package dev.kettlemark.sheets;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.SheetContent.Head;
import java.util.Locale;
import java.util.Optional;

/** The figures of a sheet for other programs: in full, and as the sheet shows them. */
public final class SheetJson {

  private static final Gson GSON = new GsonBuilder()
      .setPrettyPrinting()
      .disableHtmlEscaping()
      .serializeNulls()
      .create();

  private SheetJson() {}

  public static String of(SheetContent sheet) {
    Head head = sheet.head();
    JsonObject json = new JsonObject();
    json.addProperty("name", head.name());
    json.addProperty("title", head.title());
    json.addProperty("code", head.code().orElse(null));
    json.addProperty("version", head.version().orElse(null));
    json.addProperty("since", head.since().map(Object::toString).orElse(null));
    json.addProperty("issuedFor", head.issuedFor().orElse(null));
    json.addProperty("stale", head.isStale());
    json.addProperty("status", head.status().orElse(null));
    json.addProperty("author", head.author().orElse(null));
    json.addProperty("house", head.house().orElse(null));
    json.addProperty("madeOutOn", head.day().toString());
    json.addProperty("reader", head.request().reader().word());
    json.addProperty("language", head.request().locale().toLanguageTag());
    JsonArray figures = new JsonArray();
    sheet.figures().forEach(figure -> figures.add(figure(sheet, figure)));
    json.add("figures", figures);
    json.addProperty("notice", sheet.speech().text(Phrase.words("compliance.check")));
    return GSON.toJson(json) + "\n";
  }

  private static JsonObject figure(SheetContent sheet, SheetFigure figure) {
    JsonObject json = new JsonObject();
    json.addProperty("id", figure.id());
    Optional<SheetFigure.Reach> reach = figure.reach().toOptional();
    json.addProperty("value", reach.map(SheetFigure.Reach::best).orElse(null));
    json.addProperty("low", reach.map(SheetFigure.Reach::low).orElse(null));
    json.addProperty("high", reach.map(SheetFigure.Reach::high).orElse(null));
    json.addProperty("unit", figure.unit().symbol());
    json.addProperty("spread", figure.spread().name().toLowerCase(Locale.ROOT));
    json.addProperty("basis", figure.basis().name().toLowerCase(Locale.ROOT));
    json.addProperty("shown", sheet.speech().text(figure));
    if (figure.reach() instanceof Outcome.Unknown<SheetFigure.Reach> unknown) {
      json.addProperty("unknown", unknown.because());
    }
    return json;
  }
}
