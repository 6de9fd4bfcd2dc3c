package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.syntax.ParsedText;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutlineTest {

  @Test
  void showsStagesWithTheirLinesInAFormula() {
    check("""
        # The glaze of the house.
        formula glaze "Lemon glaze"
          code      GS-9

        stage syrup "Hot syrup" in pan
           0.40 % of liquid  guar-gum  at 20 °C
          q.s. water
          all of foam
          part 1/2 of base
          sprinkle  guar-gum, salt into water over 60 s
        """, """
        FORMULA glaze | Lemon glaze
          STAGE syrup | Hot syrup
            AMOUNT guar-gum | 0.40 % of liquid
            AMOUNT water | q.s.
            TAKE foam | all of
            TAKE base | part 1/2 of
            STEP sprinkle | guar-gum, salt into water over 60 s
        """);
  }

  @Test
  void showsToolsPartsAndChanges() {
    check("""
        house quay
          altitude 8 m
          bowl bowl-5 holds 4.8 L
        variant b of a
          code GS-2
          replace honey by 2 % syrup
        product c
          centre 12 g b
          loss 3 % of centre
        """, """
        HOUSE quay |\s
          TOOL bowl | bowl-5 holds 4.8 L
        VARIANT b |\s
          CHANGE replace | honey by 2 % syrup
        PRODUCT c |\s
          PART centre | 12 g b
        """);
  }

  @Test
  void showsWhatIsThereOfBrokenLines() {
    check("""
        formula
        stage one °C
          3 %
          all of
          3 % sugar salt ?
        """, """
        FORMULA (no name) |\s
          STAGE one |\s
            AMOUNT (no name) | 3 %
            TAKE (no name) | all of
            AMOUNT sugar | 3 %
        """);
  }

  @Test
  void showsAStageThatStandsAlone() {
    check("stage one\n  mix\n", "STAGE one | \n  STEP mix | \n");
  }

  @Test
  void coversASectionUpToItsLastLineAndSelectsItsName() {
    String text = "formula a\n\nstage b\n  mix  # well\n\n# of the next\nformula c\n";
    Outline.Item formula = Outline.of(ParsedText.of(text)).get(0);
    assertEquals("formula a\n\nstage b\n  mix  # well", formula.span().of(text));
    assertEquals("a", formula.selection().of(text));
    Outline.Item stage = formula.children().get(0);
    assertEquals("stage b\n  mix  # well", stage.span().of(text));
    assertEquals("b", stage.selection().of(text));
    assertEquals("mix", stage.children().get(0).span().of(text));
  }

  @Test
  void isEmptyForATextWithoutSections() {
    assertTrue(Outline.of(ParsedText.of("# nothing\n\n")).isEmpty());
  }

  private static void check(String text, String expected) {
    StringBuilder drawn = new StringBuilder();
    draw(Outline.of(ParsedText.of(text)), 0, drawn);
    assertEquals(expected, drawn.toString());
  }

  private static void draw(List<Outline.Item> items, int depth, StringBuilder drawn) {
    for (Outline.Item item : items) {
      assertTrue(item.span().contains(item.selection()));
      drawn
          .append("  ".repeat(depth))
          .append(item.kind())
          .append(' ')
          .append(item.name())
          .append(" | ")
          .append(item.detail())
          .append('\n');
      draw(item.children(), depth + 1, drawn);
    }
  }
}
