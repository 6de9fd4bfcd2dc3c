package dev.kettlemark.comparison;

import java.util.ArrayList;
import java.util.List;

/**
 * A line that only one of two texts has.
 *
 * @param added whether the later text has it
 * @param line without the space around it
 */
public record LineChange(boolean added, String line) {

  /** Longer texts that differ so much are told as one gone and one new. */
  private static final long MOST_PAIRS = 4_000_000;

  /**
   * What must be taken out of one text and put into it to get another; layout and lines that are comments do
   * not count.
   */
  static List<LineChange> between(String before, String after) {
    List<String> old = lines(before);
    List<String> now = lines(after);
    int head = 0;
    while (head < Math.min(old.size(), now.size()) && old.get(head).equals(now.get(head))) {
      head++;
    }
    int tail = 0;
    while (tail < Math.min(old.size(), now.size()) - head
        && old.get(old.size() - 1 - tail).equals(now.get(now.size() - 1 - tail))) {
      tail++;
    }
    return aligned(old.subList(head, old.size() - tail), now.subList(head, now.size() - tail));
  }

  private static List<LineChange> aligned(List<String> old, List<String> now) {
    List<LineChange> changes = new ArrayList<>();
    int i = 0;
    int j = 0;
    if ((long) old.size() * now.size() <= MOST_PAIRS) {
      int[][] common = commonFrom(old, now);
      while (i < old.size() && j < now.size()) {
        if (old.get(i).equals(now.get(j))) {
          i++;
          j++;
        } else if (common[i + 1][j] >= common[i][j + 1]) {
          changes.add(new LineChange(false, old.get(i++)));
        } else {
          changes.add(new LineChange(true, now.get(j++)));
        }
      }
    }
    old.subList(i, old.size()).forEach(line -> changes.add(new LineChange(false, line)));
    now.subList(j, now.size()).forEach(line -> changes.add(new LineChange(true, line)));
    return changes;
  }

  /** How many lines two texts can have in common from each pair of lines on. */
  private static int[][] commonFrom(List<String> old, List<String> now) {
    int[][] common = new int[old.size() + 1][now.size() + 1];
    for (int i = old.size() - 1; i >= 0; i--) {
      for (int j = now.size() - 1; j >= 0; j--) {
        common[i][j] = old.get(i).equals(now.get(j))
            ? common[i + 1][j + 1] + 1
            : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    return common;
  }

  private static List<String> lines(String text) {
    return text.lines()
        .map(line -> line.strip().replaceAll("\\s+", " "))
        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
        .toList();
  }
}
