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

  /** The index of the text after an edit, of which only the lines around the edit are looked at. */
  LineIndex after(TextEdit edit, String text) {
    // One character further up, where an edit may part or join the two halves of a line end.
    int first = lineAt(Math.max(0, edit.span().start() - 1));
    int kept = lineAt(edit.span().end()) + 1;
    int keptStart = kept < starts.length ? starts[kept] + edit.growth() : Integer.MAX_VALUE;
    int[] between = new int[16];
    int count = 0;
    int next = LineEnds.next(text, starts[first]);
    while (next >= 0 && next < keptStart) {
      if (count == between.length) {
        between = Arrays.copyOf(between, count * 2);
      }
      between[count++] = next;
      next = LineEnds.next(text, next);
    }
    int[] changed = Arrays.copyOf(starts, first + 1 + count + starts.length - kept);
    System.arraycopy(between, 0, changed, first + 1, count);
    for (int line = kept; line < starts.length; line++) {
      changed[first + 1 + count + line - kept] = starts[line] + edit.growth();
    }
    return new LineIndex(changed);
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
