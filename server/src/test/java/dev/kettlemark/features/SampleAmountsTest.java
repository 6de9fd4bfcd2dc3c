package dev.kettlemark.features;

import dev.kettlemark.Pinned;
import dev.kettlemark.SampleTexts;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import java.util.StringJoiner;
import org.junit.jupiter.api.Test;

/** Every amount of every sample formula, and what its stages make of it, as committed. */
class SampleAmountsTest {

  private static final int WIDTH = 80;

  @Test
  void everySampleWeighsWhatIsCommitted() {
    Snapshot snapshot = Snapshot.of(Library.of(SampleTexts.libraryWithPantry()));
    StringJoiner tables = new StringJoiner("\n\n", "", "\n");
    for (Document document : snapshot.library().ownDocuments()) {
      document
          .entries()
          .forEach(entry -> Formulas.computed(snapshot, entry)
              .map(FormulaTable::of)
              .ifPresent(
                  table -> tables.add(String.join("\n", FormulaTableText.lines(table, WIDTH)))));
    }
    Pinned.resource("features/sample-amounts.txt").check(tables.toString(), getClass());
  }
}
