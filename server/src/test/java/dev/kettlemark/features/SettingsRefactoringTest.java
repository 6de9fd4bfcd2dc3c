package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.library.Document;
import java.util.List;
import org.junit.jupiter.api.Test;

class SettingsRefactoringTest {

  private static String sorted(String text) {
    Document document = Document.of("a.kettle", text);
    return SettingsRefactoring.of(document)
        .map(one -> RefactoringFixture.applied(document, one))
        .orElse(text);
  }

  @Test
  void ordersSettingsAndTakesCommentsAlong() {
    String text = """
        formula candy "Candy"
          caution   hot-sugar
          # as weighed in March
          batch     1000 g             # two pans
          percent   of charge
          expect    yield 80 % ± 2
          expect    density 1.3-1.4 g/mL
          code      LY-9
          basis     liquid = water

        stage syrup
          70.00 %             white-sugar
          note      "stays"
           q.s.               water
        """;
    String sorted = """
        formula candy "Candy"
          code      LY-9
          percent   of charge
          # as weighed in March
          batch     1000 g  # two pans
          basis     liquid = water
          expect    yield 80 % ± 2
          expect    density 1.3-1.4 g/mL
          caution   hot-sugar

        stage syrup
          70.00 %             white-sugar
          note      "stays"
           q.s.               water
        """;
    assertEquals(Formatter.format(sorted), Formatter.format(sorted(text)));
    assertEquals(sorted(text), sorted(sorted(text)));
  }

  @Test
  void keepsTheOrderOfChanges() {
    String text = """
        variant b of a
          note      "first"
          add       1.00 % honey
          drop      honey
          code      LY-3
        """;
    assertTrue(
        sorted(text).contains("  add       1.00 %  honey\n  drop      honey\n  note"),
        sorted(text));
  }

  @Test
  void leavesWhatCannotBeReadWhereItIs() {
    String text = """
        formula candy
          batch     1000 g
          bacth     900 g
          code      LY-9
        """;
    assertEquals(text, sorted(text));
  }

  @Test
  void findsNothingInTheSamples() {
    for (Document document : FeatureFixture.samples("gannet-slip")) {
      assertEquals(
          List.of(),
          SettingsRefactoring.of(document).stream().map(Refactoring::edits).toList(),
          document.uri());
    }
  }
}
