package dev.kettlemark.text;

import java.util.Arrays;

/** Where the lines of a text start; a line ends with a line feed, a carriage return, or both. */
final class LineIndex {

  private final int[] starts;

  private LineIndex(int[] starts) {
    this.starts = starts;
  }

  static LineIndex of(String text) {
    int[] starts = new int[Math.max(16, text.length() / 24)];
    int count = 1;
    for (int next = LineEnds.next(text, 0); next >= 0; next = LineEnds.next(text, next)) {
      if (count == starts.length) {
        starts = Arrays.copyOf(starts, count * 2);
      }
      starts[count++] = next;
    }
    return new LineIndex(Arrays.copyOf(starts, count));
  }

  int count() {
    return starts.length;
  }

  int start(int line) {
    return starts[line];
  }

  int lineAt(int offset) {
    int found = Arrays.binarySearch(starts, offset);
    return found >= 0 ? found : -found - 2;
  }
}
