package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Fix;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.text.Position;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;

/** Findings as the project's own JSON, whose form {@code check --help} documents. */
final class FindingsJson {

  private FindingsJson() {}

  static JsonObject of(CheckResult result) {
    JsonArray findings = new JsonArray();
    result.findings().forEach(placed -> findings.add(finding(placed)));
    JsonArray accepted = new JsonArray();
    result.accepted().forEach(known -> accepted.add(accepted(known)));
    JsonObject summary = new JsonObject();
    summary.addProperty("files", result.files());
    summary.addProperty("formulas", result.formulas());
    for (Severity severity : Severity.values()) {
      summary.addProperty(severity.word(), result.count(severity));
    }
    summary.addProperty("accepted", result.accepted().size());
    JsonArray problems = new JsonArray();
    result.problems().forEach(problems::add);
    JsonObject json = new JsonObject();
    json.add("findings", findings);
    json.add("accepted", accepted);
    json.add("summary", summary);
    json.add("unreadable", problems);
    return json;
  }

  private static JsonObject accepted(CheckResult.Accepted known) {
    JsonObject json = finding(known.placed());
    json.addProperty("reason", known.acceptance().reasonText());
    known.acceptance().until().ifPresent(day -> json.addProperty("until", day.toString()));
    return json;
  }

  private static JsonObject finding(PlacedFinding placed) {
    Finding finding = placed.finding();
    JsonObject json = new JsonObject();
    json.addProperty("path", placed.shownPath());
    addRange(json, placed.source(), placed.span());
    json.addProperty("severity", finding.severity().word());
    json.addProperty("rule", finding.rule().id());
    json.addProperty("message", finding.message());
    if (!finding.note().isEmpty()) {
      json.addProperty("note", finding.note());
    }
    JsonArray fixes = new JsonArray();
    finding.fixes().forEach(fix -> fixes.add(fix(placed, fix)));
    json.add("fixes", fixes);
    JsonArray related = new JsonArray();
    for (PlacedFinding.Elsewhere other : placed.elsewhere()) {
      JsonObject place = new JsonObject();
      place.addProperty("path", placed.folder().shown(other.uri()));
      addRange(place, other.source(), other.span());
      place.addProperty("message", other.message());
      related.add(place);
    }
    json.add("related", related);
    return json;
  }

  private static JsonObject fix(PlacedFinding placed, Fix fix) {
    JsonObject json = new JsonObject();
    json.addProperty("title", fix.title());
    JsonArray edits = new JsonArray();
    placed.edits(fix).forEach(edit -> {
      JsonObject change = new JsonObject();
      addRange(change, placed.source(), edit.span());
      change.addProperty("text", edit.replacement());
      edits.add(change);
    });
    json.add("edits", edits);
    return json;
  }

  private static void addRange(JsonObject json, Source source, Span span) {
    json.add("start", position(source, span.start()));
    json.add("end", position(source, span.end()));
  }

  private static JsonObject position(Source source, int offset) {
    Position position = PlacedFinding.humanPosition(source, offset);
    JsonObject json = new JsonObject();
    json.addProperty("line", position.line());
    json.addProperty("column", position.column());
    return json;
  }
}
