package dev.kettlemark.text;

/** Where lines end: at a line feed, a carriage return, or both together. */
public final class LineEnds {

  private LineEnds() {}

  /** Start of the line after the one that holds the offset, or -1 where there is none. */
  public static int next(String text, int offset) {
    for (int i = offset; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        return i + 1;
      }
      if (c == '\r') {
        return i + 1 < text.length() && text.charAt(i + 1) == '\n' ? i + 2 : i + 1;
      }
    }
    return -1;
  }

  /** How a text ends its lines: as it ends the first; with a line feed where it has only one. */
  public static String of(String text) {
    int second = next(text, 0);
    if (second < 0) {
      return "\n";
    }
    int end = second > 1 && text.startsWith("\r\n", second - 2) ? second - 2 : second - 1;
    return text.substring(end, second);
  }

  /** Whether a line starts at the offset; one does at the end of a text that ends its last line. */
  public static boolean isLineStart(String text, int offset) {
    if (offset == 0) {
      return true;
    }
    char before = text.charAt(offset - 1);
    return before == '\n'
        || (before == '\r' && (offset == text.length() || text.charAt(offset) != '\n'));
  }
}
