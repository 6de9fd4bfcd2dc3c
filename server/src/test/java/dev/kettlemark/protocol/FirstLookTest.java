package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FirstLookTest {

  /** A text that stops at a mistake would warm up next to nothing. */
  @Test
  void goesThroughAFormulaThatIsWhole() {
    Document document = Document.of("untitled:first-look", FirstLook.FORMULA);
    Snapshot snapshot = Snapshot.of(Library.of(
        Stream.concat(Pantry.documents().stream(), Stream.of(document)).toList()));
    Entry entry = document.entries().get(0);
    assertTrue(Formulas.computed(snapshot, entry).orElseThrow().composition().isKnown());
    List<String> found = Rules.of(snapshot, entry).stream()
        .map(Finding::rule)
        .map(rule -> rule.id())
        .toList();
    assertEquals(List.of("missing-caution"), found);
    FirstLook.take();
  }
}
