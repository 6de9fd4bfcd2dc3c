package dev.kettlemark.features;

import static dev.kettlemark.features.TextTable.Align.LEFT;
import static dev.kettlemark.features.TextTable.Align.RIGHT;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TextTableTest {

  private static void check(String expected, TextTable table, int width) {
    assertEquals(expected, String.join("\n", table.lines(width)) + "\n");
  }

  @Test
  void linesColumnsUp() {
    check(
        """
        heading
          sugar  60.0 g  fine
          gum     1.0 g
        """,
        new TextTable(2, LEFT, RIGHT, LEFT)
            .plain("heading")
            .row("sugar", "60.0 g", "fine")
            .row("gum", "1.0 g"),
        40);
  }

  @Test
  void givesANameThatFindsNoRoomALineOfItsOwn() {
    check(
        """
        a-very-long-name
                  60.0 g
        gum        1.0 g
        """,
        new TextTable(0, LEFT, RIGHT).row("a-very-long-name", "60.0 g").row("gum", "1.0 g"),
        16);
  }

  @Test
  void countsCellsNotCharacters() {
    check("""
        砂糖  1
        gum   2
        """, new TextTable(0, LEFT, RIGHT).row("砂糖", "1").row("gum", "2"), 40);
  }

  @Test
  void breaksParagraphs() {
    check("  one two\n  three\n", new TextTable(0, LEFT).paragraph("one two three", 2, 10), 10);
  }
}
