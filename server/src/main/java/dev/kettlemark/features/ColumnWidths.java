package dev.kettlemark.features;

import dev.kettlemark.features.TextTable.Align;
import dev.kettlemark.text.Cells;
import java.util.Arrays;
import java.util.List;

/**
 * How wide the columns of a table are in a line of some width.
 *
 * <p>Texts give way before figures, and no word is cut: a table of long words alone may stick out.
 */
final class ColumnWidths {

  /** A column of texts that is narrower is tiring to read; an own choice, no source. */
  private static final int READABLE = 14;

  private final List<Align> aligns;
  private final int[] widest;
  private final int[] longestWord;

  ColumnWidths(List<List<String>> rows, List<Align> aligns) {
    this.aligns = aligns;
    this.widest = new int[aligns.size()];
    this.longestWord = new int[aligns.size()];
    for (List<String> cells : rows) {
      for (int i = 0; i < cells.size(); i++) {
        widest[i] = Math.max(widest[i], Cells.of(cells.get(i)));
        for (String word : cells.get(i).split(" ")) {
          longestWord[i] = Math.max(longestWord[i], Cells.of(word));
        }
      }
    }
  }

  int[] within(int width, int gap) {
    int room = width - gap * (aligns.size() - 1);
    int[] widths = widest.clone();
    narrow(widths, room, Align.LEFT, READABLE);
    narrow(widths, room, Align.RIGHT, 1);
    narrow(widths, room, Align.LEFT, 1);
    return widths;
  }

  /** Takes from the widest column of a kind, one cell after the other, as long as it can spare one. */
  private void narrow(int[] widths, int room, Align align, int least) {
    boolean isSpare = true;
    while (isSpare && Arrays.stream(widths).sum() > room) {
      int column = -1;
      for (int i = 0; i < widths.length; i++) {
        boolean canSpare =
            aligns.get(i) == align && widths[i] > Math.max(1, Math.max(least, longestWord[i]));
        if (canSpare && (column < 0 || widths[i] > widths[column])) {
          column = i;
        }
      }
      isSpare = column >= 0;
      if (isSpare) {
        widths[column]--;
      }
    }
  }
}
