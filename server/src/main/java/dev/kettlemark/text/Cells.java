package dev.kettlemark.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Text measured in the cells of a terminal: most characters take one, wide ones two, marks none.
 *
 * <p>Source: Unicode Standard Annex #11, East Asian Width, classes W and F; and the emoji blocks of
 * the Unicode Character Database, which terminals show two cells wide.
 */
public final class Cells {

  /** First and last code point of each wide stretch, in order. */
  private static final int[] WIDE = {
    0x1100, 0x115F, 0x231A, 0x231B, 0x2329, 0x232A, 0x23E9, 0x23EC, 0x2614, 0x2615, 0x2648, 0x2653,
    0x26AA, 0x26AB, 0x26BD, 0x26BE, 0x2705, 0x2705, 0x270A, 0x270B, 0x2728, 0x2728, 0x274C, 0x274C,
    0x2E80, 0x303E, 0x3041, 0x33FF, 0x3400, 0x4DBF, 0x4E00, 0xA4CF, 0xA960, 0xA97F, 0xAC00, 0xD7A3,
    0xF900, 0xFAFF, 0xFE30, 0xFE6F, 0xFF01, 0xFF60, 0xFFE0, 0xFFE6, 0x1F300, 0x1F64F, 0x1F680,
    0x1F6FF, 0x1F900, 0x1F9FF, 0x1FA70, 0x1FAFF, 0x20000, 0x3FFFD
  };

  /** Most texts are of these alone, each of which takes one cell. */
  private static final char FIRST_PRINTED = ' ';

  private static final char LAST_PLAIN = '~';

  private static final String CUT = "…";

  /** No name of a kitchen is as wide as this. */
  private static final int WIDEST_WORD = 200;

  private Cells() {}

  /** The cells of a code point. */
  public static int of(int codePoint) {
    int type = Character.getType(codePoint);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT
        || type == Character.CONTROL) {
      return 0;
    }
    return isWide(codePoint) ? 2 : 1;
  }

  /** The cells of a text without tabs and line ends. */
  public static int of(String text) {
    int cells = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= FIRST_PRINTED && c <= LAST_PLAIN) {
        cells++;
      } else {
        int codePoint = text.codePointAt(i);
        cells += of(codePoint);
        i += Character.charCount(codePoint) - 1;
      }
    }
    return cells;
  }

  /** The text with spaces behind it up to a width; unchanged where it is wider. */
  public static String left(String text, int width) {
    return text + " ".repeat(Math.max(0, width - of(text)));
  }

  /** The text with spaces before it up to a width; unchanged where it is wider. */
  public static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - of(text))) + text;
  }

  /**
   * The text in lines of at most a width, broken at spaces.
   *
   * <p>A word wider than a line stands alone and sticks out, since a name cut in two is no name; what
   * is far too wide for any name is cut off.
   *
   * @param width in cells, at least 1
   */
  public static List<String> wrapped(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String whole : text.strip().split("\\s+")) {
      String word = cut(whole, WIDEST_WORD);
      if (line.length() > 0 && of(line.toString()) + 1 + of(word) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The text's start, with a mark where something was left off. */
  static String cut(String text, int width) {
    if (of(text) <= width) {
      return text;
    }
    StringBuilder kept = new StringBuilder();
    int cells = 0;
    for (int codePoint : text.codePoints().toArray()) {
      cells += of(codePoint);
      if (cells > width - 1) {
        break;
      }
      kept.appendCodePoint(codePoint);
    }
    return kept + CUT;
  }

  private static boolean isWide(int codePoint) {
    for (int i = 0; i < WIDE.length && WIDE[i] <= codePoint; i += 2) {
      if (codePoint <= WIDE[i + 1]) {
        return true;
      }
    }
    return false;
  }
}
