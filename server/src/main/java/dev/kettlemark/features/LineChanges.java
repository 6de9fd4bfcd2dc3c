package dev.kettlemark.features;

import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;

/** The lines by which two texts differ, as edits of whole lines. */
final class LineChanges {

  private final List<String> old;
  private final List<String> fresh;
  private final int[] starts;
  private final List<TextEdit> edits = new ArrayList<>();

  private LineChanges(String before, String after) {
    this.old = lines(before);
    this.fresh = lines(after);
    this.starts = new int[old.size() + 1];
    for (int i = 0; i < old.size(); i++) {
      starts[i + 1] = starts[i] + old.get(i).length();
    }
  }

  /** What makes the one text out of the other, in order. */
  static List<TextEdit> between(String before, String after) {
    LineChanges changes = new LineChanges(before, after);
    changes.find();
    return List.copyOf(changes.edits);
  }

  private static List<String> lines(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split("(?<=\n)", -1));
  }

  private void find() {
    int first = 0;
    while (first < Math.min(old.size(), fresh.size()) && old.get(first).equals(fresh.get(first))) {
      first++;
    }
    int oldEnd = old.size();
    int freshEnd = fresh.size();
    while (oldEnd > first
        && freshEnd > first
        && old.get(oldEnd - 1).equals(fresh.get(freshEnd - 1))) {
      oldEnd--;
      freshEnd--;
    }
    walk(first, oldEnd, freshEnd, common(first, oldEnd, freshEnd));
  }

  /** How many lines the rests of both texts have in common, from each pair of lines on. */
  private int[][] common(int first, int oldEnd, int freshEnd) {
    int[][] common = new int[oldEnd - first + 1][freshEnd - first + 1];
    for (int i = oldEnd - first - 1; i >= 0; i--) {
      for (int j = freshEnd - first - 1; j >= 0; j--) {
        common[i][j] = old.get(first + i).equals(fresh.get(first + j))
            ? common[i + 1][j + 1] + 1
            : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    return common;
  }

  private void walk(int first, int oldEnd, int freshEnd, int[][] common) {
    int i = first;
    int j = first;
    while (i < oldEnd || j < freshEnd) {
      int oldStart = i;
      int freshStart = j;
      while ((i < oldEnd || j < freshEnd)
          && !(i < oldEnd && j < freshEnd && old.get(i).equals(fresh.get(j)))) {
        boolean drop = j == freshEnd
            || (i < oldEnd && common[i - first + 1][j - first] >= common[i - first][j - first + 1]);
        i += drop ? 1 : 0;
        j += drop ? 0 : 1;
      }
      if (i > oldStart || j > freshStart) {
        edits.add(new TextEdit(
            new Span(starts[oldStart], starts[i]), String.join("", fresh.subList(freshStart, j))));
      }
      while (i < oldEnd && j < freshEnd && old.get(i).equals(fresh.get(j))) {
        i++;
        j++;
      }
    }
  }
}
