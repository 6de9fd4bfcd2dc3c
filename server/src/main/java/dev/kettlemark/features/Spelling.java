package dev.kettlemark.features;

import dev.kettlemark.syntax.Lexeme;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The one spelling of words that may be written in several ways. */
final class Spelling {

  private static final Pattern RANGE =
      Pattern.compile("([-−]?[0-9.]+)[^0-9.]*?[-–—−][^0-9.−-]*([-−]?[0-9.]+)");
  private static final Pattern ONE = Pattern.compile("1(\\.0+)?|\\d+/\\d+");

  private static final Map<String, String> DEGREES = Map.of("degC", "°C", "degF", "°F");

  private static final Map<String, String> PLURALS =
      Map.of("piece", "pieces", "cup", "cups", "day", "days", "week", "weeks", "month", "months");

  private Spelling() {}

  /**
   * How a word is written.
   *
   * @param before the word before it on the line
   */
  static String of(Token token, Optional<Token> before) {
    return switch (token.kind()) {
      case NUMBER -> number(token.text());
      case UNIT -> unit(token.text(), before);
      case SYMBOL -> token.text().startsWith("+") ? "±" : token.text();
      default -> token.text();
    };
  }

  /** A range has no space around its dash; before a negative end the dash is the longer one. */
  private static String number(String text) {
    Matcher range = RANGE.matcher(text);
    if (!range.matches()) {
      return text;
    }
    boolean negativeEnd = !Character.isDigit(range.group(2).charAt(0));
    return range.group(1) + (negativeEnd ? "–" : "-") + range.group(2);
  }

  private static String unit(String text, Optional<Token> before) {
    String singular = text.endsWith("s") ? text.substring(0, text.length() - 1) : text;
    String plural = PLURALS.get(singular);
    Optional<Token> number = before.filter(token -> token.is(Lexeme.Kind.NUMBER));
    if (plural == null || number.isEmpty()) {
      return DEGREES.getOrDefault(text, text);
    }
    return ONE.matcher(number.get().text()).matches() ? singular : plural;
  }
}
