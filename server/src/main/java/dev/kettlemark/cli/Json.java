package dev.kettlemark.cli;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonElement;
import java.io.PrintWriter;

/** How JSON is written: indented, with the text's own characters. */
final class Json {

  private static final Gson GSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  private Json() {}

  static String text(JsonElement json) {
    return GSON.toJson(json) + "\n";
  }

  static void write(JsonElement json, PrintWriter out) {
    out.println(GSON.toJson(json));
  }
}
