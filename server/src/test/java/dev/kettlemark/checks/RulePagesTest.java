package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule has a page with fixed headings, an example that it finds and a better form that it does not. */
class RulePagesTest {

  private static final List<String> HEADINGS =
      List.of("What", "Why", "Example", "Better", "When to ignore", "Source");

  static List<Rule> rules() {
    return Rules.all();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void aPageHasItsHeadingsInOrder(Rule rule) {
    String page = RulePages.page(rule.info().id()).orElseThrow();
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile("(?m)^## (.*)$").matcher(page);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    assertEquals(HEADINGS, found);
    assertTrue(page.startsWith("# " + rule.info().id() + "\n"), rule.info().id());
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theExampleIsFound(Rule rule) {
    assertFalse(found(rule, "Example").isEmpty(), rule.info().id());
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theBetterFormIsCleanOfErrorsAndWarnings(Rule rule) {
    Document document = block(rule, "Better");
    List<String> findings = findings(document).stream()
        .filter(f -> f.severity().compareTo(Severity.WARNING) <= 0
            || f.rule().id().equals(rule.info().id()))
        .map(f -> f.rule().id() + ": " + f.message())
        .toList();
    assertEquals(List.of(), findings, rule.info().id());
  }

  private static List<Finding> found(Rule rule, String heading) {
    return findings(block(rule, heading)).stream()
        .filter(f -> f.rule().id().equals(rule.info().id()))
        .toList();
  }

  private static List<Finding> findings(Document document) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(document);
    Snapshot snapshot = Snapshot.of(Library.of(all), Today.DAY);
    return document.entries().stream()
        .flatMap(e -> Rules.of(snapshot, e).stream())
        .toList();
  }

  static Document block(Rule rule, String heading) {
    String page = RulePages.page(rule.info().id()).orElseThrow();
    Matcher matcher = Pattern.compile("## " + heading + "\n.*?```kettle\n(.*?)```", Pattern.DOTALL)
        .matcher(page);
    assertTrue(matcher.find(), rule.info().id() + " has no block under " + heading);
    return Document.of(rule.info().id() + ".kettle", matcher.group(1));
  }
}
