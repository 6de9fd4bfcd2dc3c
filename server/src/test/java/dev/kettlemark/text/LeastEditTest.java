package dev.kettlemark.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Chance;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeastEditTest {

  @ParameterizedTest
  @CsvSource({
    "248 °C, 120 °C, 0, 3, 120",
    "1200 g, 2400 g, 0, 2, 24",
    "same, same, 4, 4, ''",
    "aa, aaa, 2, 2, a",
    "'', new, 0, 0, new",
    "old, '', 0, 3, ''",
  })
  void replacesOnlyWhatChanges(String before, String after, int start, int end, String text) {
    TextEdit whole = new TextEdit(new Span(0, before.length()), after);
    assertEquals(new TextEdit(new Span(start, end), text), whole.withoutWhatStays(before));
  }

  @Test
  void cutsNoCharacterInTwo() {
    // Both emoji begin with the same surrogate.
    TextEdit edit = new TextEdit(new Span(0, 2), "🍬");
    assertEquals(edit, edit.withoutWhatStays("🍭"));
  }

  @Test
  void comesToTheSameText() {
    Chance.rounds(2000, random -> {
      String text = letters(random, 8);
      int start = random.nextInt(text.length() + 1);
      int end = start + random.nextInt(text.length() - start + 1);
      TextEdit edit = new TextEdit(new Span(start, end), letters(random, 6));
      assertEquals(edit.applyTo(text), edit.withoutWhatStays(text).applyTo(text));
    });
  }

  private static String letters(Random random, int most) {
    return random
        .ints(random.nextInt(most + 1), 0, 3)
        .mapToObj(index -> "abc".substring(index, index + 1))
        .reduce("", String::concat);
  }
}
