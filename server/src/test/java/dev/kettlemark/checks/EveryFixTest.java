package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each fix leaves a text without what it mends, in the example of each rule and in the gallery. */
class EveryFixTest {

  private static final List<Document> PANTRY = Pantry.documents();

  static Stream<Document> texts() {
    Stream<Document> pages = Rules.all().stream().map(rule -> RulePagesTest.block(rule, "Example"));
    return Stream.concat(pages, SampleTexts.mistakes().stream());
  }

  @ParameterizedTest
  @MethodSource("texts")
  void leavesLessOfWhatItMends(Document document) {
    List<String> kept = new ArrayList<>();
    for (Entry entry : document.entries()) {
      for (Finding finding : Rules.of(snapshot(document), entry)) {
        for (Fix fix : finding.fixes()) {
          Document mended = mended(document, entry, fix);
          if (count(mended, finding.rule()) >= count(document, finding.rule())) {
            kept.add(finding.rule().id() + ": " + fix.title() + "\n"
                + mended.text().source().text());
          }
        }
      }
    }
    assertEquals(List.of(), kept);
  }

  @ParameterizedTest
  @MethodSource("texts")
  void safeFixesLeaveNothingSafe(Document document) {
    SafeFixes once = SafeFixes.of(snapshot(document), document);
    SafeFixes twice = SafeFixes.of(snapshot(once.document()), once.document());
    assertEquals(List.of(), twice.applied());
  }

  @Test
  void moreThanTwentyRulesOfferAFix() {
    long mending = texts()
        .flatMap(document -> document.entries().stream()
            .flatMap(entry -> Rules.of(snapshot(document), entry).stream()))
        .filter(finding -> !finding.fixes().isEmpty())
        .map(finding -> finding.rule().id())
        .distinct()
        .count();
    assertTrue(mending > 20, "only " + mending);
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

  private static long count(Document document, RuleInfo rule) {
    Snapshot snapshot = snapshot(document);
    return document.entries().stream()
        .flatMap(entry -> Rules.of(snapshot, entry).stream())
        .filter(finding -> finding.rule().equals(rule))
        .count();
  }

  private static Snapshot snapshot(Document document) {
    List<Document> all = new ArrayList<>(PANTRY);
    all.add(document);
    return Snapshot.of(Library.of(all), Today.DAY);
  }
}
