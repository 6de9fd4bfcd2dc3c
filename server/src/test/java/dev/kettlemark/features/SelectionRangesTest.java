package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.syntax.ParsedText;
import java.util.List;
import org.junit.jupiter.api.Test;

class SelectionRangesTest {

  @Test
  void growsFromAWordToTheText() {
    check(
        "# x\nformula a\n\nstage b\n  stream  syrup into fo<|>am over 90 s  # slowly\n",
        "foam",
        "into foam",
        "stream  syrup into foam over 90 s",
        "stage b\n  stream  syrup into foam over 90 s  # slowly",
        "formula a\n\nstage b\n  stream  syrup into foam over 90 s  # slowly",
        "# x\nformula a\n\nstage b\n  stream  syrup into foam over 90 s  # slowly\n");
  }

  @Test
  void growsFromAFigureToItsUnitAndItsList() {
    check(
        "stage b\n  fold  salt, 2<|> g nut",
        "2",
        "2 g nut",
        "salt, 2 g nut",
        "fold  salt, 2 g nut",
        "stage b\n  fold  salt, 2 g nut");
  }

  @Test
  void isTheWholeTextWhereNothingStands() {
    check("<|>", "");
    check("\n<|>\n", "\n\n");
  }

  private static void check(String marked, String... expected) {
    int offset = marked.indexOf("<|>");
    String text = marked.replace("<|>", "");
    List<String> ranges = SelectionRanges.at(ParsedText.of(text), offset).stream()
        .map(span -> span.of(text))
        .toList();
    assertEquals(List.of(expected), ranges);
  }
}
