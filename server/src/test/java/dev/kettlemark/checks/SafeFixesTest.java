package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Only what is beyond doubt is mended unseen. */
class SafeFixesTest {

  private static final String WRITTEN = """
      formula syrup
        percent of charge
        batch 500 G
      stage pan
        .5 %   sea-salt
        99.5 % white-sugar
        rest   for 3 minutes
      """;

  @Test
  void spellsOutWhatIsMeant() {
    SafeFixes fixes = mended(WRITTEN);
    assertEquals(
        WRITTEN
            .replace("500 G", "500 g")
            .replace(".5 %   sea", "0.5 %   sea")
            .replace("minutes", "min"),
        fixes.document().text().source().text());
    assertEquals(
        List.of("missing-unit", "bare-point", "missing-time-unit"),
        fixes.applied().stream().map(fix -> fix.finding().rule().id()).toList());
  }

  @Test
  void theEditsMakeTheSameText() {
    Document before = Document.of("a.kettle", WRITTEN);
    SafeFixes fixes = mended(WRITTEN);
    assertEquals(
        fixes.document().text().source().text(),
        before.text().source().with(fixes.edits(before)).text());
  }

  /** A point without its zero is mended first; only then does the figure lack its scale. */
  @Test
  void goesOnUntilNothingIsLeft() {
    String text = """
        formula syrup
        stage pan
          q.s. water at 20 celsius
          cook to .5 celsius
        """;
    Document before = Document.of("a.kettle", text);
    SafeFixes fixes = mended(text);
    assertEquals(
        text.replace("20 celsius", "20 °C").replace(".5 celsius", "0.5 °C"),
        fixes.document().text().source().text());
    assertEquals(
        List.of(0, 0, 1), fixes.applied().stream().map(SafeFixes.Applied::round).toList());
    assertEquals(
        fixes.document().text().source().text(),
        before.text().source().with(fixes.edits(before)).text());
  }

  @Test
  void leavesAloneWhatMayBeMeantOtherwise() {
    String text = """
        formula syrup
        stage pan
          1,200 g white-sugar
          400 water
          cook to 248
          rest for 90
        """;
    assertEquals(text, mended(text).document().text().source().text());
  }

  private static SafeFixes mended(String text) {
    Document document = Document.of("a.kettle", text);
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(document);
    return SafeFixes.of(Snapshot.of(Library.of(all)), document);
  }
}
