package dev.kettlemark.labelling;

import java.util.List;
import java.util.Locale;

/**
 * Whole words to be found in texts that somebody wrote; case does not count, and a hyphen is a space.
 *
 * <p>The laws' words, a hundred of them, are looked for in every name of every ingredient at each key, so without a
 * pattern for each.
 *
 * @param plain the words, as {@link #plain(String) plain} text; never empty
 */
public record Phrase(String plain) {

  /** Where words stand that are not there, as {@link String#indexOf(String)} tells it. */
  static final int NOWHERE = -1;

  public Phrase {
    if (plain.isEmpty()) {
      throw new IllegalArgumentException("a phrase has words");
    }
  }

  public static Phrase of(String words) {
    return new Phrase(plain(words));
  }

  static List<Phrase> all(List<String> words) {
    return words.stream().map(Phrase::of).toList();
  }

  /** Whether a phrase stands in a text as words of its own. */
  public static boolean isIn(String text, String phrase) {
    return of(phrase).isInPlain(plain(text));
  }

  /** Whether it stands in a {@link #plain(String) plain} text as words of its own. */
  boolean isInPlain(String text) {
    return placeIn(text, 0) != NOWHERE;
  }

  static boolean isAnyIn(List<String> plainTexts, List<Phrase> phrases) {
    for (String text : plainTexts) {
      for (Phrase phrase : phrases) {
        if (phrase.isInPlain(text)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Where it stands in a {@link #plain(String) plain} text as words of its own.
   *
   * @param from where to begin
   * @return the first place there or behind, or {@link #NOWHERE}
   */
  int placeIn(String text, int from) {
    int place = text.indexOf(plain, from);
    while (place != NOWHERE && !standsAlone(text, place)) {
      place = text.indexOf(plain, place + 1);
    }
    return place;
  }

  int length() {
    return plain.length();
  }

  private boolean standsAlone(String text, int place) {
    int end = place + plain.length();
    return (place == 0 || !isOfWord(text.codePointBefore(place)))
        && (end == text.length() || !isOfWord(text.codePointAt(end)));
  }

  /** A letter or number; Unicode's general categories L and N. */
  private static boolean isOfWord(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.DECIMAL_DIGIT_NUMBER, Character.LETTER_NUMBER, Character.OTHER_NUMBER -> true;
      default -> Character.isLetter(codePoint);
    };
  }

  /** The text in lower case, with hyphens as spaces; each character keeps its place. */
  static String plain(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    return (lower.length() == text.length() ? lower : lowerOneByOne(text)).replace('-', ' ');
  }

  /** For the few whose small letter is written with more: İ is an i here, and not an i with a dot set over it. */
  private static String lowerOneByOne(String text) {
    StringBuilder lower = new StringBuilder(text.length());
    text.codePoints().map(Character::toLowerCase).forEach(lower::appendCodePoint);
    return lower.toString();
  }
}
