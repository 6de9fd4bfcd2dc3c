package dev.kettlemark.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.kettlemark.Chance;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextEditTest {

  @Test
  void replacesInsertsAndDeletes() {
    assertEquals("60 g", new TextEdit(new Span(0, 2), "60").applyTo("50 g"));
    assertEquals("50 kg", TextEdit.insert(3, "k").applyTo("50 g"));
    assertEquals("50", TextEdit.delete(new Span(2, 4)).applyTo("50 g"));
  }

  @Test
  void saysHowMuchLongerTheTextBecomes() {
    assertEquals(3, new TextEdit(new Span(1, 2), "🍯b\n").growth());
    assertEquals(-4, TextEdit.delete(new Span(2, 6)).growth());
  }

  @Test
  void keepsTheOrderOfInsertionsAtOnePlace() {
    List<TextEdit> edits = List.of(TextEdit.insert(1, "1"), TextEdit.insert(1, "2"));
    assertEquals("a12b", TextEdit.applyAll("ab", edits));
  }

  @Test
  void refusesEditsThatOverlap() {
    List<TextEdit> edits =
        List.of(new TextEdit(new Span(0, 3), "x"), new TextEdit(new Span(2, 4), "y"));
    assertThrows(IllegalArgumentException.class, () -> TextEdit.applyAll("abcdef", edits));
  }

  @Test
  void refusesASpanThatEndsBeforeItStarts() {
    assertThrows(IllegalArgumentException.class, () -> new Span(3, 2));
    assertThrows(IllegalArgumentException.class, () -> new Span(-1, 2));
  }

  /** Edits of one text give the same in any order, and the same as one after the other from the end. */
  @Test
  void givesTheSameInAnyOrder() {
    Chance.rounds(2000, random -> {
      String text = "0123456789".substring(random.nextInt(5));
      List<TextEdit> edits = new ArrayList<>();
      int place = 0;
      while (place < text.length()) {
        int end = Math.min(text.length(), place + 1 + random.nextInt(3));
        edits.add(new TextEdit(new Span(place, end), "abc".substring(random.nextInt(4))));
        place = end + random.nextInt(3);
      }
      String expected = text;
      for (int e = edits.size() - 1; e >= 0; e--) {
        expected = edits.get(e).applyTo(expected);
      }
      Collections.shuffle(edits, random);
      assertEquals(expected, TextEdit.applyAll(text, edits));
      int growth = edits.stream().mapToInt(TextEdit::growth).sum();
      assertEquals(text.length() + growth, expected.length());
    });
  }

  @Test
  void quotesNoMoreThanALine() {
    assertEquals("`honey`", Excerpt.of("honey"));
    assertEquals("`" + "🍯".repeat(40) + "…`", Excerpt.of("🍯".repeat(50)));
    assertEquals("`" + "x".repeat(40) + "`", Excerpt.of("x".repeat(40)));
  }
}
