package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.checks.Severity;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every refactoring at every place of every sample. */
class RefactoringsTest {

  /** A menu that is longer is not read. */
  private static final int MOST = 30;

  private static final List<String> ANOTHER =
      List.of("Exchange", "Scale", "Make a variant", "Make a formula", "Bring", "Let");

  /** What a batch of another size may rightly be told: its pan, its bowl, its pieces. */
  private static final List<String> VESSELS =
      List.of("pan-boils-over", "bowl-overflow", "overfull-bowl", "too-few-grams");

  @ParameterizedTest
  @ValueSource(strings = {"gannet-slip", "mistakes"})
  void everyOneLeavesATextThatReadsAndHasNoNewErrors(String folder) {
    List<Document> samples = FeatureFixture.samples(folder);
    Snapshot library = FeatureFixture.snapshot(samples);
    List<String> worse = new ArrayList<>();
    int tried = 0;
    for (Document document : samples) {
      // The mistakes stand each for itself; together their names would meet.
      Snapshot snapshot =
          folder.equals("mistakes") ? FeatureFixture.snapshot(List.of(document)) : library;
      Set<Map<String, List<TextEdit>>> seen = new HashSet<>();
      for (Span range : ranges(document.text().source())) {
        List<Refactoring> found = Refactorings.at(snapshot, document, range, true);
        assertTrue(found.size() <= MOST, () -> "" + RefactoringFixture.titles(found));
        for (Refactoring one : found) {
          assertTrue(one.title().length() <= ActionTitle.MOST, one.title());
          if (one.edits().isEmpty() || !seen.add(one.edits())) {
            continue;
          }
          tried++;
          worse.addAll(worse(snapshot, document, one));
        }
      }
    }
    assertEquals("", String.join("\n", worse));
    assertTrue(tried > 50, "only " + tried);
  }

  private static List<String> worse(Snapshot snapshot, Document document, Refactoring one) {
    List<String> worse = new ArrayList<>();
    Snapshot after = snapshot;
    for (Map.Entry<String, List<TextEdit>> edit : one.edits().entrySet()) {
      Document old = snapshot.library().document(edit.getKey()).orElseThrow();
      String text = TextEdit.applyAll(old.text().source().text(), edit.getValue());
      assertFalse(text.equals(old.text().source().text()), one.title() + " changes nothing");
      assertEquals(
          old.text().sections().stream()
              .mapToInt(s -> s.section().problems().size())
              .sum(),
          ParsedText.of(text).sections().stream()
              .mapToInt(s -> s.section().problems().size())
              .sum(),
          () -> document.uri() + ": " + one.title() + "\n" + text);
      after = after.with(after.library().with(Document.of(edit.getKey(), text)));
    }
    // Another amount, batch or composition may well be worth a warning; another way to write is
    // not.
    Set<Severity> grave = ANOTHER.stream().anyMatch(one.title()::startsWith)
        ? EnumSet.of(Severity.ERROR)
        : EnumSet.of(Severity.ERROR, Severity.WARNING);
    Map<String, Integer> before = RefactoringFixture.found(snapshot, document, grave);
    Map<String, Integer> now = RefactoringFixture.found(
        after, after.library().document(document.uri()).orElseThrow(), grave);
    // A gum's overdose is told as such only where the dose is not written on the charge.
    now.remove("agent-overdose");
    if (one.title().startsWith("Scale")) {
      VESSELS.forEach(now::remove);
      VESSELS.forEach(before::remove);
    }
    if (sum(now) > sum(before)) {
      worse.add(document.uri() + ": " + one.title() + ": " + before + " → " + now);
    }
    return worse;
  }

  private static int sum(Map<String, Integer> errors) {
    return errors.values().stream().mapToInt(count -> count).sum();
  }

  /** Every line, and every three lines together. */
  private static List<Span> ranges(Source source) {
    List<Span> ranges = new ArrayList<>();
    for (int line = 0; line < source.lineCount(); line++) {
      ranges.add(Span.at(source.line(line).start()));
      int last = Math.min(line + 2, source.lineCount() - 1);
      ranges.add(source.line(line).to(source.line(last)));
    }
    return ranges;
  }
}
