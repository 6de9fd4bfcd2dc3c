package dev.kettlemark.text;

/** A piece of text as a message quotes it: between back-quotes, and never longer than a line. */
public final class Excerpt {

  /** Longer words than this are no words of a formula; the reader knows them by their start. */
  private static final int MOST_CHARACTERS = 40;

  private Excerpt() {}

  /** The text in back-quotes, cut where it is too long to read. */
  public static String of(String text) {
    if (text.codePointCount(0, Math.min(text.length(), 2 * MOST_CHARACTERS + 2))
        <= MOST_CHARACTERS) {
      return "`" + text + "`";
    }
    return "`" + text.substring(0, text.offsetByCodePoints(0, MOST_CHARACTERS)) + "…`";
  }
}
