package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The form is that of POSIX.1-2017, utility diff, section "Diff -u Output Format". */
class LayoutDiffTest {

  private static void check(String before, String after, String... hunks) {
    List<String> diff = LayoutDiff.of("a", before, after);
    assertEquals(List.of(hunks), diff.isEmpty() ? diff : diff.subList(2, diff.size()));
  }

  @Test
  void saysNothingOfEqualTexts() {
    check("a\nb\n", "a\nb\n");
  }

  @Test
  void dropsABlankLine() {
    check("a\n\n\nb\n", "a\n\nb\n", "@@ -1,4 +1,3 @@", " a", " ", "-", " b");
  }

  @Test
  void addsABlankLine() {
    check("a\nb\n", "a\n\nb\n", "@@ -1,2 +1,3 @@", " a", "+", " b");
  }

  @Test
  void tellsOfAMissingLineEnd() {
    check("a", "a\n", "@@ -1,1 +1,1 @@", "-a", "\\ No newline at end of file", "+a");
  }

  @Test
  void startsAnEmptySideAtTheLineBefore() {
    check("\n", "", "@@ -1,1 +0,0 @@", "-");
  }

  @Test
  void splitsWhatLiesFarApart() {
    check(
        " 1\n2\n3\n4\n5\n6\n7\n8\n 9\n",
        "1\n2\n3\n4\n5\n6\n7\n8\n9\n",
        "@@ -1,4 +1,4 @@",
        "- 1",
        "+1",
        " 2",
        " 3",
        " 4",
        "@@ -6,4 +6,4 @@",
        " 6",
        " 7",
        " 8",
        "- 9",
        "+9");
  }

  @Test
  void joinsWhatLiesClose() {
    check(
        " 1\n2\n3\n4\n5\n6\n7\n 8\n",
        "1\n2\n3\n4\n5\n6\n7\n8\n",
        "@@ -1,8 +1,8 @@",
        "- 1",
        "+1",
        " 2",
        " 3",
        " 4",
        " 5",
        " 6",
        " 7",
        "- 8",
        "+8");
  }
}
