package dev.kettlemark.labelling;

import java.util.Locale;
import java.util.regex.Pattern;

/** Whole words in a text that somebody wrote; case does not count, and a hyphen is a space. */
public final class Phrase {

  private Phrase() {}

  /** Whether a phrase stands in a text as words of its own. */
  public static boolean isIn(String text, String phrase) {
    String searched = plain(text);
    return searched.contains(plain(phrase)) && pattern(phrase).matcher(searched).find();
  }

  /** A pattern that finds the phrase in a {@link #plain} text. */
  static Pattern pattern(String phrase) {
    return Pattern.compile(
        "(?<![\\p{L}\\p{N}])" + Pattern.quote(plain(phrase)) + "(?![\\p{L}\\p{N}])");
  }

  /** The text in lower case, with hyphens as spaces; each character keeps its place. */
  static String plain(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    return (lower.length() == text.length() ? lower : text).replace('-', ' ');
  }
}
