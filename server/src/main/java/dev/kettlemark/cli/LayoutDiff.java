package dev.kettlemark.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * The difference between a text and its layout, or its safe fixes, as a unified diff.
 *
 * <p>Both change lines within themselves, and laying out adds or drops blank lines, so the lines of both
 * texts pair up one by one without a search.
 */
final class LayoutDiff {

  private static final int CONTEXT = 3;

  private final List<Line> lines = new ArrayList<>();

  /** One line of the diff: {@code ' '}, {@code '-'} or {@code '+'}, and the text with its line end. */
  private record Line(char mark, String text) {

    boolean isChange() {
      return mark != ' ';
    }
  }

  private LayoutDiff(List<String> before, List<String> after) {
    int i = 0;
    int j = 0;
    while (i < before.size() || j < after.size()) {
      boolean gone =
          j == after.size() || (i < before.size() && isDropped(before.get(i), after.get(j)));
      boolean added =
          i == before.size() || (j < after.size() && isDropped(after.get(j), before.get(i)));
      if (!gone && !added && before.get(i).equals(after.get(j))) {
        lines.add(new Line(' ', before.get(i)));
        i++;
        j++;
        continue;
      }
      if (!added) {
        lines.add(new Line('-', before.get(i)));
        i++;
      }
      if (!gone) {
        lines.add(new Line('+', after.get(j)));
        j++;
      }
    }
  }

  /** The diff, line by line; empty where both texts are the same. */
  static List<String> of(String name, String before, String after) {
    List<String> result = new ArrayList<>();
    LayoutDiff diff = new LayoutDiff(split(before), split(after));
    diff.addHunks(result);
    if (!result.isEmpty()) {
      result.addAll(0, List.of("--- " + name, "+++ " + name));
    }
    return result;
  }

  private static List<String> split(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split("(?<=\n)"));
  }

  private static boolean isDropped(String line, String other) {
    return line.isBlank() && !other.isBlank();
  }

  private void addHunks(List<String> result) {
    int next = 0;
    while (true) {
      int first = nextChange(next);
      if (first == lines.size()) {
        return;
      }
      int end = first + 1;
      int following = nextChange(end);
      while (following < lines.size() && following - end <= 2 * CONTEXT) {
        end = following + 1;
        following = nextChange(end);
      }
      int from = Math.max(next, first - CONTEXT);
      int to = Math.min(lines.size(), end + CONTEXT);
      addHunk(result, from, to);
      next = to;
    }
  }

  private int nextChange(int from) {
    int i = from;
    while (i < lines.size() && !lines.get(i).isChange()) {
      i++;
    }
    return i;
  }

  private void addHunk(List<String> result, int from, int to) {
    result.add("@@ -" + range('+', from, to) + " +" + range('-', from, to) + " @@");
    for (Line line : lines.subList(from, to)) {
      boolean ended = line.text().endsWith("\n");
      String text = ended ? line.text().substring(0, line.text().length() - 1) : line.text();
      result.add(line.mark() + text);
      if (!ended) {
        result.add("\\ No newline at end of file");
      }
    }
  }

  /** Start and count of a hunk on the side whose lines do not bear the other side's mark. */
  private String range(char otherMark, int from, int to) {
    long before = count(otherMark, 0, from);
    long count = count(otherMark, from, to);
    return (count == 0 ? before : before + 1) + "," + count;
  }

  private long count(char otherMark, int from, int to) {
    return lines.subList(from, to).stream()
        .filter(line -> line.mark() != otherMark)
        .count();
  }
}
