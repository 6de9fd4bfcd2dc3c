package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each fix leaves a text without what it mends, in the example of each rule and in the gallery. */
class EveryFixTest {

  private static final List<Document> PANTRY = Pantry.documents();

  /** What a fix may bring that was not there before, since only a person can go on from there. */
  private static final Map<Mending, Set<String>> LEAVING = Map.of(
      // Only once it is weighed does anybody know how much it is.
      new Mending("spooned-gum", "Weigh …"), Set.of("agent-overdose"));

  static Stream<Document> texts() {
    Stream<Document> pages = Rules.all().stream().map(rule -> RulePagesTest.block(rule, "Example"));
    return Stream.concat(pages, SampleTexts.mistakes().stream());
  }

  @ParameterizedTest
  @MethodSource("texts")
  void leavesLessOfWhatItMends(Document document) {
    assertEquals(
        List.of(),
        failures(
            document,
            (before, after, fix) -> after.of(fix.rule()) >= before.of(fix.rule())
                ? List.of("still found")
                : List.of()));
  }

  /** A fix may leave work behind, but none of it may be an error or a warning that was not there before. */
  @ParameterizedTest
  @MethodSource("texts")
  void bringsNothingNew(Document document) {
    assertEquals(
        List.of(),
        failures(
            document,
            (before, after, fix) -> after.graver(before).stream()
                .filter(news -> !LEAVING.getOrDefault(fix, Set.of()).contains(news))
                .toList()));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void safeFixesLeaveNothingSafe(Document document) {
    SafeFixes once = SafeFixes.of(snapshot(document), document);
    SafeFixes twice = SafeFixes.of(snapshot(once.document()), once.document());
    assertEquals(List.of(), twice.applied());
  }

  @Test
  void eachRuleOffersAFixOrSaysWhyNot() {
    Set<String> without =
        Rules.all().stream().map(rule -> rule.info().id()).collect(Collectors.toSet());
    without.removeAll(Mends.found().any());
    assertEquals(new TreeSet<>(Mends.NONE.keySet()), new TreeSet<>(without));
  }

  /** A fix by its rule and its title, of which the names and figures are left out. */
  record Mending(String rule, String title) {
    static Mending of(Finding finding, Fix fix) {
      return new Mending(
          finding.rule().id(),
          fix.title().replaceAll("`[^`]*`", "…").replaceAll("[0-9][0-9.,–-]*", "…"));
    }
  }

  private interface Judge {
    List<String> faults(Tally before, Tally after, Mending fix);
  }

  /** How often each rule speaks, of whatever weight, and how often as an error or a warning. */
  private record Tally(Map<String, Long> all, Map<String, Long> grave) {
    static Tally of(Document document) {
      Snapshot snapshot = snapshot(document);
      List<Finding> findings = document.entries().stream()
          .flatMap(entry -> Rules.of(snapshot, entry).stream())
          .toList();
      return new Tally(
          counts(findings.stream()),
          counts(findings.stream()
              .filter(finding -> finding.severity().compareTo(Severity.WARNING) <= 0)));
    }

    private static Map<String, Long> counts(Stream<Finding> findings) {
      return findings.collect(
          Collectors.groupingBy(finding -> finding.rule().id(), Collectors.counting()));
    }

    long of(String rule) {
      return all.getOrDefault(rule, 0L);
    }

    /** The rules that find more grave things here than before. */
    List<String> graver(Tally before) {
      return grave.entrySet().stream()
          .filter(entry -> entry.getValue() > before.grave().getOrDefault(entry.getKey(), 0L))
          .map(Map.Entry::getKey)
          .sorted()
          .toList();
    }
  }

  private static List<String> failures(Document document, Judge judge) {
    List<String> failures = new ArrayList<>();
    Tally before = Tally.of(document);
    for (Entry entry : document.entries()) {
      for (Finding finding : Rules.of(snapshot(document), entry)) {
        for (Fix fix : finding.fixes()) {
          Document mended = mended(document, entry, fix);
          List<String> faults = judge.faults(before, Tally.of(mended), Mending.of(finding, fix));
          if (!faults.isEmpty()) {
            failures.add(Mending.of(finding, fix) + " " + faults + "\n"
                + mended.text().source().text());
          }
        }
      }
    }
    return failures;
  }

  private static Document mended(Document document, Entry entry, Fix fix) {
    return Document.of(
        document.uri(),
        document
            .text()
            .source()
            .with(fix.edits().stream()
                .map(edit -> edit.shiftedBy(entry.placed().offset()))
                .toList())
            .text());
  }

  private static Snapshot snapshot(Document document) {
    List<Document> all = new ArrayList<>(PANTRY);
    all.add(document);
    return Snapshot.of(Library.of(all), Today.DAY);
  }
}
