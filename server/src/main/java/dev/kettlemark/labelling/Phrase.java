package dev.kettlemark.labelling;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whole words to be found in texts that somebody wrote; case does not count, and a hyphen is a space.
 *
 * <p>The laws' words are looked for in every name of every ingredient at each key, so they are prepared once.
 */
public final class Phrase {

  private final String plain;
  private final Pattern pattern;

  private Phrase(String plain) {
    this.plain = plain;
    this.pattern =
        Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(plain) + "(?![\\p{L}\\p{N}])");
  }

  public static Phrase of(String words) {
    return new Phrase(plain(words));
  }

  static List<Phrase> all(List<String> words) {
    return words.stream().map(Phrase::of).toList();
  }

  /** Whether a phrase stands in a text as words of its own. */
  public static boolean isIn(String text, String phrase) {
    String searched = plain(text);
    // Mostly it is not, and then no pattern is needed.
    return searched.contains(plain(phrase)) && of(phrase).isInPlain(searched);
  }

  /** Whether it stands in a {@link #plain} text as words of its own. */
  boolean isInPlain(String text) {
    return text.contains(plain) && pattern.matcher(text).find();
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

  /** Where it stands in a {@link #plain} text. */
  Matcher matcher(String text) {
    return pattern.matcher(text);
  }

  /** The text in lower case, with hyphens as spaces; each character keeps its place. */
  static String plain(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    return (lower.length() == text.length() ? lower : text).replace('-', ' ');
  }
}
