package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Fix;
import dev.kettlemark.checks.Rule;
import dev.kettlemark.checks.RuleInfo;
import dev.kettlemark.checks.RulePages;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.text.Position;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Findings in the Static Analysis Results Interchange Format, OASIS standard, version 2.1.0.
 *
 * <p>Files below the working folder are named from it, so that a log reads the same on each machine.
 */
final class FindingsSarif {

  private static final String SCHEMA = "https://json.schemastore.org/sarif-2.1.0.json";
  private static final String BASE = "%SRCROOT%";

  private final URI workingFolder;
  private final List<RuleInfo> rules = Rules.all().stream().map(Rule::info).toList();

  FindingsSarif(Path workingFolder) {
    this.workingFolder = workingFolder.toAbsolutePath().normalize().toUri();
  }

  JsonObject of(CheckResult result) {
    JsonObject run = new JsonObject();
    run.add("tool", tool());
    run.add("invocations", array(invocation(result)));
    run.add("originalUriBaseIds", uriBases());
    run.addProperty("columnKind", "utf16CodeUnits");
    JsonArray results = new JsonArray();
    result.findings().forEach(placed -> results.add(result(placed)));
    result.accepted().stream()
        .filter(known -> !known.placed().finding().rule().safety())
        .forEach(known -> results.add(suppressed(known)));
    run.add("results", results);
    JsonObject log = new JsonObject();
    log.addProperty("$schema", SCHEMA);
    log.addProperty("version", "2.1.0");
    log.add("runs", array(run));
    return log;
  }

  private JsonObject tool() {
    JsonObject driver = new JsonObject();
    driver.addProperty("name", "Kettlemark");
    driver.addProperty("version", Version.number());
    JsonArray described = new JsonArray();
    rules.forEach(rule -> described.add(describe(rule)));
    driver.add("rules", described);
    JsonObject tool = new JsonObject();
    tool.add("driver", driver);
    return tool;
  }

  private static JsonObject describe(RuleInfo rule) {
    JsonObject json = new JsonObject();
    json.addProperty("id", rule.id());
    json.add("shortDescription", text(sentence(rule.summary())));
    RulePages.page(rule.id()).ifPresent(page -> {
      JsonObject help = text(page);
      help.addProperty("markdown", page);
      json.add("help", help);
    });
    JsonObject configuration = new JsonObject();
    configuration.addProperty("level", level(rule.severity()));
    json.add("defaultConfiguration", configuration);
    return json;
  }

  private static JsonObject invocation(CheckResult result) {
    JsonObject json = new JsonObject();
    json.addProperty("executionSuccessful", result.problems().isEmpty());
    JsonArray notifications = new JsonArray();
    for (String problem : result.problems()) {
      JsonObject notification = new JsonObject();
      notification.addProperty("level", "error");
      notification.add("message", text(problem));
      notifications.add(notification);
    }
    json.add("toolExecutionNotifications", notifications);
    return json;
  }

  private static JsonObject uriBases() {
    JsonObject base = new JsonObject();
    base.add("description", text("The folder in which the check was run."));
    JsonObject bases = new JsonObject();
    bases.add(BASE, base);
    return bases;
  }

  /**
   * An accepted finding, as section 3.27.23 of the standard has it. What is shown all the same, for
   * safety, is no suppressed result but a note.
   */
  private JsonObject suppressed(CheckResult.Accepted known) {
    JsonObject suppression = new JsonObject();
    suppression.addProperty("kind", "inSource");
    suppression.addProperty("justification", known.acceptance().reasonText());
    JsonObject json = result(known.placed());
    json.add("suppressions", array(suppression));
    return json;
  }

  private JsonObject result(PlacedFinding placed) {
    Finding finding = placed.finding();
    JsonObject json = new JsonObject();
    json.addProperty("ruleId", finding.rule().id());
    json.addProperty("ruleIndex", rules.indexOf(finding.rule()));
    json.addProperty("level", level(finding.severity()));
    String why = finding.note().isEmpty() ? "" : " " + sentence(finding.note());
    json.add("message", text(sentence(finding.message()) + why));
    json.add("locations", array(location(placed.document().uri(), placed.source(), placed.span())));
    JsonArray related = new JsonArray();
    for (PlacedFinding.Elsewhere other : placed.elsewhere()) {
      JsonObject place = location(other.uri(), other.source(), other.span());
      place.addProperty("id", related.size() + 1);
      place.add("message", text(sentence(other.message())));
      related.add(place);
    }
    if (!related.isEmpty()) {
      json.add("relatedLocations", related);
    }
    JsonArray fixes = new JsonArray();
    finding.fixes().forEach(fix -> fixes.add(fix(placed, fix)));
    if (!fixes.isEmpty()) {
      json.add("fixes", fixes);
    }
    return json;
  }

  private JsonObject fix(PlacedFinding placed, Fix fix) {
    JsonArray replacements = new JsonArray();
    placed.edits(fix).forEach(edit -> {
      JsonObject replacement = new JsonObject();
      replacement.add("deletedRegion", region(placed.source(), edit.span()));
      if (!edit.replacement().isEmpty()) {
        replacement.add("insertedContent", text(edit.replacement()));
      }
      replacements.add(replacement);
    });
    JsonObject change = new JsonObject();
    change.add("artifactLocation", artifact(placed.document().uri()));
    change.add("replacements", replacements);
    JsonObject json = new JsonObject();
    json.add("description", text(sentence(fix.title())));
    json.add("artifactChanges", array(change));
    return json;
  }

  private JsonObject location(String uri, Source source, Span span) {
    JsonObject physical = new JsonObject();
    physical.add("artifactLocation", artifact(uri));
    physical.add("region", region(source, span));
    JsonObject json = new JsonObject();
    json.add("physicalLocation", physical);
    return json;
  }

  private JsonObject artifact(String uri) {
    URI relative = workingFolder.relativize(URI.create(uri));
    JsonObject json = new JsonObject();
    json.addProperty("uri", relative.toString());
    if (!relative.isAbsolute()) {
      json.addProperty("uriBaseId", BASE);
    }
    return json;
  }

  private static JsonObject region(Source source, Span span) {
    Position start = PlacedFinding.humanPosition(source, span.start());
    Position end = PlacedFinding.humanPosition(source, span.end());
    JsonObject json = new JsonObject();
    json.addProperty("startLine", start.line());
    json.addProperty("startColumn", start.column());
    json.addProperty("endLine", end.line());
    json.addProperty("endColumn", end.column());
    return json;
  }

  private static String level(Severity severity) {
    return switch (severity) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case INFORMATION, HINT -> "note";
    };
  }

  /** The standard asks for sentences, section 3.11.3; the project's messages are clauses. */
  private static String sentence(String clause) {
    String start = clause.isEmpty() ? "" : clause.substring(0, 1).toUpperCase(Locale.ROOT);
    String rest = clause.isEmpty() ? "" : clause.substring(1);
    return start + rest + (clause.endsWith(".") || clause.endsWith("?") ? "" : ".");
  }

  private static JsonObject text(String text) {
    JsonObject json = new JsonObject();
    json.addProperty("text", text);
    return json;
  }

  private static JsonArray array(JsonObject only) {
    JsonArray array = new JsonArray();
    array.add(only);
    return array;
  }
}
