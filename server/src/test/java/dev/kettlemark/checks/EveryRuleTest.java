package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Pinned;
import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Origin;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.text.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Nothing of a rule is forgotten: its page, its tests, its row in the catalogue, its thresholds. */
class EveryRuleTest {

  private static final Path TESTS = Path.of("src/test/java/dev/kettlemark/checks");

  private static final Path RULES = Path.of("src/main/java/dev/kettlemark/checks");

  private static final Pattern BLOCK = Pattern.compile("\"\"\"\\n(.*?)\"\"\"", Pattern.DOTALL);

  private static final Pattern THRESHOLD = Pattern.compile("Threshold\\.([A-Z_]+)\\b");

  @Test
  void nothingIsMissing() throws IOException {
    List<String> missing = new ArrayList<>();
    Catalogue catalogue = Catalogue.read();
    for (Rule rule : Rules.all()) {
      String id = rule.info().id();
      if (RulePages.page(id).isEmpty()) {
        missing.add(id + ": a page");
      }
      if (catalogue.of(rule.info()).isEmpty()) {
        missing.add(id + ": a row in the catalogue");
      }
      missing.addAll(untested(rule));
      missing.addAll(untoldThresholds(rule));
    }
    assertEquals("", String.join("\n", missing));
  }

  /** Where each example is found: a finding on another line is one of something else. */
  @Test
  void eachExampleIsFoundOnTheLineThatIsMeant() {
    StringBuilder found = new StringBuilder();
    for (Rule rule : Rules.all()) {
      List<Listing.Shown> own =
          Listing.findings(List.of(RulePagesTest.block(rule, "Example"))).stream()
              .filter(finding -> finding.rule().equals(rule.info().id()))
              .toList();
      found.append(Listing.text(own));
    }
    Pinned.resource("checks/examples.txt").check(found.toString(), EveryRuleTest.class);
  }

  /** The lines that belong to the findings of the examples, those of the pantry by their file. */
  @Test
  void eachConflictShowsItsOtherPlace() {
    StringBuilder found = new StringBuilder();
    for (Rule rule : Rules.all()) {
      Document document = RulePagesTest.block(rule, "Example");
      List<Document> all = new ArrayList<>(Pantry.documents());
      all.add(document);
      Snapshot snapshot = Snapshot.of(Library.of(all), Today.DAY);
      document.entries().stream()
          .flatMap(entry -> Rules.of(snapshot, entry).stream())
          .filter(finding -> finding.rule().equals(rule.info()))
          .flatMap(finding -> finding.related().stream())
          .forEach(place -> found
              .append(rule.info().id())
              .append(": ")
              .append(place.message())
              .append(": ")
              .append(line(place.origin()))
              .append('\n'));
    }
    Pinned.resource("checks/related.txt").check(found.toString(), EveryRuleTest.class);
  }

  @Test
  void whatTheHouseSetsIsShownWhereItIsJudgedBy() {
    Document document = Document.of("a.kettle", """
        house lantern-yard
          threshold total-tolerance 0.3 % "our scales read 1 g"
        formula syrup
          percent of charge
        stage pan
          60.00 % white-sugar
          39.00 % water
          mix     white-sugar, water
        """);
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(document);
    Snapshot snapshot = Snapshot.of(Library.of(all), Today.DAY);
    List<String> places = Rules.of(snapshot, document.entries().get(1)).stream()
        .filter(finding -> finding.rule().id().equals("total-off"))
        .flatMap(finding -> finding.related().stream())
        .map(place -> place.message() + ": " + line(place.origin()))
        .toList();
    assertEquals(
        List.of("the house sets `total-tolerance` here:"
            + " threshold total-tolerance 0.3 % \"our scales read 1 g\""),
        places);
  }

  private static String line(Origin origin) {
    Source text = Source.of(origin.section().text());
    return text.line(text.lineAt(origin.span().start())).of(text.text()).strip();
  }

  /** A test class of its own that draws where the rule fires and where it stays silent. */
  private static List<String> untested(Rule rule) throws IOException {
    Path file = TESTS.resolve(rule.getClass().getSimpleName() + "Test.java");
    String id = rule.info().id();
    if (!Files.exists(file)) {
      return List.of(id + ": a test class");
    }
    String source = Files.readString(file);
    boolean fires = source.contains("^ " + id + ": ")
        || source.contains("checkSeverity(")
        || source.contains("assertFalse(findings");
    boolean isSilent = BLOCK
        .matcher(source)
        .results()
        .anyMatch(block -> !block.group(1).contains("^ " + id + ": "));
    List<String> missing = new ArrayList<>();
    if (!fires) {
      missing.add(id + ": a test in which it fires");
    }
    if (!isSilent) {
      missing.add(id + ": a test in which it stays silent");
    }
    return missing;
  }

  private static List<String> untoldThresholds(Rule rule) throws IOException {
    String source = Files.readString(RULES.resolve(rule.getClass().getSimpleName() + ".java"));
    String page = RulePages.page(rule.info().id()).orElse("");
    List<String> missing = new ArrayList<>();
    Matcher asked = THRESHOLD.matcher(source);
    while (asked.find()) {
      threshold(asked.group(1))
          .filter(threshold -> !page.contains("`" + threshold.word() + "`")
              && !page.contains("`threshold " + threshold.word() + "`"))
          .ifPresent(threshold ->
              missing.add(rule.info().id() + ": `" + threshold.word() + "` on its page"));
    }
    return missing.stream().distinct().toList();
  }

  /** The threshold that a constant holds. */
  private static Optional<Threshold<?>> threshold(String constant) {
    try {
      return Threshold.class.getField(constant).get(null) instanceof Threshold<?> threshold
          ? Optional.of(threshold)
          : Optional.empty();
    } catch (ReflectiveOperationException missing) {
      return Optional.empty();
    }
  }
}
