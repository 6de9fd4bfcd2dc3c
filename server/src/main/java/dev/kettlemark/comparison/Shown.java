package dev.kettlemark.comparison;

import dev.kettlemark.quantity.Outcome;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * A figure as a reader sees it, which is what two states are compared by.
 *
 * @param text rounded, with its unit
 * @param numbers the same in full, by unit, for other programs; empty for words and unknown figures
 * @param because why it is unknown; empty where it is known
 */
public record Shown(String text, Map<String, Double> numbers, String because) {

  static final Shown NONE = word("none");

  public Shown {
    numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
  }

  static Shown word(String text) {
    return new Shown(text, Map.of(), "");
  }

  static Shown number(String text, String unit, double value) {
    return new Shown(text, Map.of(unit, value), "");
  }

  static Shown numbers(String text, String unit, double low, double high) {
    Map<String, Double> ends = new LinkedHashMap<>();
    ends.put(unit + "Low", low);
    ends.put(unit + "High", high);
    return new Shown(text, ends, "");
  }

  /** A figure that may be unknown. */
  static <T> Shown of(Outcome<T> outcome, Function<? super T, Shown> known) {
    return outcome.fold(known, why -> new Shown("unknown", Map.of(), why.because()));
  }

  /** Whether nobody can tell the two apart. */
  boolean looksLike(Shown other) {
    return text.equals(other.text);
  }
}
