package dev.kettlemark.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Snapshot;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is measured is what the tables of BENCHMARKS.md say. */
class BenchTextsTest {

  @Test
  void theFormulaHasFortyLinesAndNothingIsHeldAgainstIt() {
    Document formula = BenchTexts.formula();
    assertEquals(40, formula.text().source().text().lines().count());
    Snapshot snapshot = Snapshot.of(BenchTexts.library(formula));
    assertEquals(List.of(), Rules.of(snapshot, formula.entries().get(0)));
  }

  @Test
  void theTextOfTheRequestsIsAboutAsLongAsItSays() {
    for (int lines : new int[] {100, 10_000}) {
      long length = BenchTexts.forFeatures(lines).lines().count();
      assertTrue(Math.abs(length - lines) <= 20, length + " lines");
    }
  }
}
