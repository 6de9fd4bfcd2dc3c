package dev.kettlemark.pictures;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide a text may become, whatever font a viewer has.
 *
 * <p>The widths are those of DejaVu Sans, among the widest of the usual fonts without serifs; read from the font.
 */
final class TextWidth {

  /** Text of the usual size, in pixels. */
  static final double PLAIN = 12;

  static final double SMALL = 11;

  /** Bold text of 13 pixels is no wider than plain text of this size. */
  static final double HEAD = 14.6;

  private static final int FIRST = ' ';

  /** From the space to the tilde, in thousandths of the em. */
  private static final int[] WIDTHS = {
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636,
    636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632,
    575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685,
    611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579,
    278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838
  };

  /** The widest Latin letters and signs. */
  private static final int OTHER = 1070;

  /** Signs of East Asian writing take a whole square each, and emoji more. */
  private static final int SQUARE = 1400;

  private static final int LAST_LATIN = 0x2FF;
  private static final int DASHES = 0x2000;
  private static final int DASHES_END = 0x2200;

  private TextWidth() {}

  /** The width of a text, in pixels. */
  static double of(String text, double size) {
    return text.codePoints().mapToLong(TextWidth::of).sum() * size / 1000;
  }

  /** A text, cut with an ellipsis where it is wider than the room. */
  static String fit(String text, double size, double room) {
    if (of(text, size) <= room) {
      return text;
    }
    int end = text.length();
    while (end > 0 && of(text.substring(0, end) + "…", size) > room) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + "…";
  }

  /** A text broken into lines at its spaces; a word that is wider than the room is cut. */
  static List<String> wrapped(String text, double size, double room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && of(longer, size) > room) {
        lines.add(fit(line.toString(), size, room));
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    lines.add(fit(line.toString(), size, room));
    return lines;
  }

  private static long of(int one) {
    int index = one - FIRST;
    if (index >= 0 && index < WIDTHS.length) {
      return WIDTHS[index];
    }
    boolean latin = one <= LAST_LATIN || (one >= DASHES && one < DASHES_END);
    return latin ? OTHER : SQUARE;
  }
}
