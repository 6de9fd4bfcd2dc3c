package dev.kettlemark.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** An edit gives the same as a fresh start, and leaves the untouched sections alone. */
class IncrementalReadingTest {

  private static final String LIBRARY = """
      # kitchen notes
      house quay "Quay"
        altitude 8 m

      ingredient sugar
        contains 100 % sucrose
      formula syrup "Syrup"
        percent of charge
        batch 500 g
      stage pan
        60 % sugar
        q.s. water
        cook to 118 °C ± 1
      product drop
        centre 8 g syrup
      """;

  private static final List<String> PIECES = List.of(
      "formula x\n",
      "stage ",
      "ingredient",
      "\n",
      "\r\n",
      "\r",
      " ",
      "-",
      "house",
      "product p\n",
      "12.5 %",
      "°C",
      "\"",
      "#",
      "é",
      "e\u0301",
      "\uD83C\uDF6F",
      "\uD83C",
      ",",
      "q.s.",
      "trial",
      "\t",
      "\uFEFF",
      "'",
      "x");

  @Test
  void agreesWithAFreshStartAfterAnyEdit() {
    Chance.rounds(400, random -> {
      ParsedText parsed = ParsedText.of(LIBRARY);
      for (int step = 0; step < 25; step++) {
        parsed = parsed.with(randomEdit(random, parsed.source().length()));
        // Of several edits at once only the last is read.
        if (random.nextInt(3) > 0) {
          assertSameReading(ParsedText.of(parsed.source().text()), parsed);
        }
      }
    });
  }

  @Test
  void keepsTheSectionsThatAnEditDoesNotTouch() {
    ParsedText before = ParsedText.of(LIBRARY);
    int place = LIBRARY.indexOf("500 g");
    ParsedText after = before.with(new TextEdit(new Span(place, place + 3), "1200"));
    int changed = 0;
    for (int i = 0; i < before.sections().size(); i++) {
      if (!before.sections().get(i).section().equals(after.sections().get(i).section())) {
        changed++;
      }
    }
    assertEquals(1, changed);
  }

  /** The line itself is read; those above are the same objects, and those below only move. */
  @Test
  void readsOnlyTheLineThatAnEditTouches() {
    ParsedText before = ParsedText.of(LIBRARY);
    Section syrup = before.sectionAt(LIBRARY.indexOf("500 g")).section();
    List<Line> read = syrup.lines();
    ParsedText typed = before
        .with(TextEdit.insert(LIBRARY.indexOf("500 g"), "1"))
        .with(new TextEdit(Span.at(LIBRARY.indexOf("500 g") + 1), "2"));
    List<Line> after = typed.sectionAt(LIBRARY.indexOf("500 g")).section().lines();
    assertEquals(read.size(), after.size());
    for (int i = 0; i < read.size(); i++) {
      if (i < 2) {
        assertSame(read.get(i), after.get(i));
      } else if (i > 2) {
        assertEquals(read.get(i).shiftedBy(2), after.get(i));
      }
    }
  }

  @Test
  void joinsASectionToTheOneAboveWhenItsFirstWordBreaks() {
    ParsedText before = ParsedText.of(LIBRARY);
    int place = LIBRARY.indexOf("formula syrup");
    ParsedText after = before.with(TextEdit.insert(place, "x"));
    assertEquals(before.sections().size() - 1, after.sections().size());
    assertSame(before.sections().get(0).section(), after.sections().get(0).section());
  }

  /** A section pasted above itself is another one, though both say the same. */
  @Test
  void holdsNoSectionTwice() {
    ParsedText before = ParsedText.of("formula a\n  batch 1 kg\nformula b\n");
    ParsedText after = before.with(TextEdit.insert(0, "formula a\n  batch 1 kg\n"));
    assertEquals(3, after.sections().size());
    assertNotSame(after.sections().get(0).section(), after.sections().get(1).section());
    assertSame(before.sections().get(1).section(), after.sections().get(2).section());
  }

  private static TextEdit randomEdit(Random random, int length) {
    int start = random.nextInt(length + 1);
    int end =
        Math.min(length, start + (random.nextInt(4) == 0 ? random.nextInt(60) : random.nextInt(3)));
    String text = random.nextBoolean() ? PIECES.get(random.nextInt(PIECES.size())) : "";
    return new TextEdit(new Span(start, end), text);
  }

  private static void assertSameReading(ParsedText fresh, ParsedText edited) {
    String text = fresh.source().text();
    assertEquals(fresh.sections().size(), edited.sections().size(), text);
    int covered = 0;
    for (int i = 0; i < fresh.sections().size(); i++) {
      ParsedText.PlacedSection expected = fresh.sections().get(i);
      ParsedText.PlacedSection actual = edited.sections().get(i);
      assertEquals(covered, actual.offset(), text);
      assertEquals(expected.offset(), actual.offset(), text);
      assertEquals(expected.section().text(), actual.section().text());
      assertEquals(expected.section().lines(), actual.section().lines());
      assertEquals(expected.section().lexemes(), actual.section().lexemes());
      assertEquals(expected.section().problems(), actual.section().problems());
      covered = actual.end();
    }
    assertTrue(covered == text.length());
  }
}
