package dev.kettlemark.cli;

/** Text of a file made fit for a terminal, so that no file can move the cursor or hide a word. */
final class Visible {

  private static final int REPLACEMENT = 0xFFFD;

  /** Letters of some scripts, and many emoji, need these between them; they move nothing. */
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;

  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private Visible() {}

  /** The text with a replacement mark for each character that has no picture; tabs become spaces. */
  static String of(String text) {
    StringBuilder result = new StringBuilder(text.length());
    text.codePoints().map(Visible::of).forEach(result::appendCodePoint);
    return result.toString();
  }

  static int of(int codePoint) {
    if (codePoint == '\t') {
      return ' ';
    }
    if (codePoint == ZERO_WIDTH_JOINER || codePoint == ZERO_WIDTH_NON_JOINER) {
      return codePoint;
    }
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR -> REPLACEMENT;
      default -> codePoint;
    };
  }
}
