package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.features.Folding.Fold;
import dev.kettlemark.features.Folding.Kind;
import dev.kettlemark.syntax.ParsedText;
import java.util.List;
import org.junit.jupiter.api.Test;

class FoldingTest {

  @Test
  void foldsSectionsStagesAndComments() {
    check(
        """
        # one
        # two
        formula a
          code x

        stage b
          mix

        # of the next
        formula c
        """,
        new Fold(0, 1, Kind.COMMENT),
        new Fold(2, 6, Kind.SECTION),
        new Fold(5, 6, Kind.STAGE));
  }

  @Test
  void foldsNothingOnOneLine() {
    check("formula a\n\n# one\nformula b\n");
  }

  @Test
  void keepsCommentsApartThatABlankLineDivides() {
    check(
        "# one\n# two\n\n# three\n# four\n",
        new Fold(0, 1, Kind.COMMENT),
        new Fold(3, 4, Kind.COMMENT));
  }

  private static void check(String text, Fold... folds) {
    assertEquals(List.of(folds), Folding.of(ParsedText.of(text)));
  }
}
