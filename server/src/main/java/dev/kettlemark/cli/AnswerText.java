package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Reach;
import dev.kettlemark.answers.Value;
import dev.kettlemark.features.TextTable;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.text.Cells;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.List;

/** How answers are written: as lines or as JSON. */
final class AnswerText {

  private final PrintWriter out;
  private final Paint paint;
  private final int width;
  private final boolean explain;

  AnswerText(PrintWriter out, Paint paint, int width, boolean explain) {
    this.out = out;
    this.paint = paint;
    this.width = width;
    this.explain = explain;
  }

  void write(Answer answer) {
    line(answer.instruction(), "", true);
    TextTable table = new TextTable(2, TextTable.Align.LEFT, TextTable.Align.LEFT);
    answer.values().forEach(value -> table.row(value.word().replace('-', ' '), value.shown()));
    table.lines(width).forEach(out::println);
    notes(answer.notes());
    if (explain) {
      out.println();
      DerivationTree.lines(answer.derivation(), paint, width, 0).forEach(out::println);
    }
  }

  void write(Reach.Way way) {
    way.answer()
        .fold(
            answer -> {
              write(answer);
              return true;
            },
            unknown -> {
              line("No " + way.word().replace('-', ' '), "", true);
              line(unknown.because(), "  ", false);
              return false;
            });
  }

  void notes(List<String> notes) {
    notes.forEach(note -> line(note, "  ", false));
  }

  void line(String text, String indent, boolean bold) {
    for (String line : Cells.wrapped(Visible.of(text), width - indent.length())) {
      out.println(indent + (bold ? paint.bold(line) : line));
    }
  }

  static JsonObject json(Answer answer) {
    JsonObject json = new JsonObject();
    json.addProperty("instruction", answer.instruction());
    JsonArray values = new JsonArray();
    answer.values().forEach(value -> values.add(json(value)));
    json.add("values", values);
    json.add("notes", words(answer.notes()));
    return json;
  }

  static JsonObject json(Reach.Way way) {
    Outcome<Answer> answer = way.answer();
    JsonObject json = new JsonObject();
    json.addProperty("way", way.word());
    answer.fold(
        known -> {
          json.add("answer", json(known));
          return true;
        },
        unknown -> {
          json.add("answer", JsonNull.INSTANCE);
          json.addProperty("because", unknown.because());
          return false;
        });
    return json;
  }

  static JsonArray words(List<String> words) {
    JsonArray array = new JsonArray();
    words.forEach(array::add);
    return array;
  }

  private static JsonObject json(Value value) {
    JsonObject json = new JsonObject();
    json.addProperty("what", value.word());
    json.addProperty("low", figure(value.low()));
    json.addProperty("figure", figure(value.figure()));
    json.addProperty("high", figure(value.high()));
    json.addProperty("unit", value.unit());
    return json;
  }

  /** Kelvin and back leaves a trace in the last digits that nobody means. */
  private static BigDecimal figure(double value) {
    return new BigDecimal(Display.trimmed(value, 9));
  }
}
