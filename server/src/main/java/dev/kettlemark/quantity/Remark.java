package dev.kettlemark.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A clause that the program tells, such as why something is unknown, before any language is chosen.
 *
 * <p>English stands in the code. What other languages say stands in their message files under {@link #key()}, with
 * the same values in the same order.
 *
 * @param pattern one plain clause in lower case, with places for the values that decided as in
 *     {@link String#format(Locale, String, Object...)}
 * @param values texts, numbers, words, remarks, or lists of them
 */
public record Remark(String pattern, List<Object> values) {

  private static final Pattern PLACE = Pattern.compile("%(?:%|(?:\\.\\d)?[sdf])");

  private static final Pattern NO_WORD = Pattern.compile("[^a-z0-9]+");

  /**
   * A word of the language that other languages have words of their own for.
   *
   * @param kind under which message files know it, such as {@code allergen}
   */
  public record Word(String kind, String word) {

    @Override
    public String toString() {
      return word.replace('-', ' ');
    }
  }

  public Remark {
    values = List.copyOf(values);
  }

  public static Remark of(String pattern, Object... values) {
    return new Remark(pattern, List.of(values));
  }

  /** By which message files know it: its words in English, without the values. */
  public String key() {
    String words = PLACE.matcher(pattern).replaceAll(" ").toLowerCase(Locale.ROOT);
    return NO_WORD.matcher(words).replaceAll("-").replaceAll("^-|-$", "");
  }

  /** What stands in each place, in the order of the pattern: a text, a word, another remark, or a list. */
  public List<Object> places() {
    List<Object> places = new ArrayList<>();
    Matcher place = PLACE.matcher(pattern);
    while (place.find() && places.size() < values.size()) {
      if (!place.group().equals("%%")) {
        Object value = values.get(places.size());
        boolean isShown = value instanceof String || value instanceof Number;
        places.add(isShown ? shown(place.group(), value) : value);
      }
    }
    return places;
  }

  // The language writes numbers with a point, whatever the machine's own custom is.
  private static String shown(String place, Object value) {
    return String.format(Locale.ROOT, place, value);
  }

  /** The clause in English, fit to follow "unknown: ". */
  public String english() {
    return values.isEmpty()
        ? pattern
        : String.format(
            Locale.ROOT, pattern, values.stream().map(Remark::english).toArray());
  }

  private static Object english(Object value) {
    return value instanceof List<?> list
        ? list.stream().map(one -> String.valueOf(english(one))).collect(Collectors.joining(", "))
        : value instanceof Remark inner ? inner.english() : value;
  }

  /** Several, in English. */
  public static List<String> english(List<Remark> remarks) {
    return remarks.stream().map(remark -> remark.english()).toList();
  }

  @Override
  public String toString() {
    return english();
  }
}
