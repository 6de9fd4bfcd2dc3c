package dev.kettlemark.labelling;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whether the name of a food speaks of an ingredient, so that its quantity is stated: Regulation (EU) No
 * 1169/2011, article 22(1)(a).
 */
final class NamedInTitle {

  /** Words of names and labels that are no ingredients by themselves. */
  private static final Set<String> PLAIN = Set.of(
      "with",
      "and",
      "without",
      "from",
      "white",
      "dark",
      "light",
      "whole",
      "water",
      "powder",
      "pieces",
      "roasted",
      "dried",
      "freeze",
      "ground",
      "pure",
      "natural",
      "sweetened",
      "candied",
      "smoked",
      "sea",
      "paste",
      "oil",
      "syrup",
      "bar",
      "free",
      "plain",
      "soft",
      "hard");

  private static final int SHORTEST = 3;

  private NamedInTitle() {}

  /** Whether a word of the label, what stands in brackets left out, is a word of the name. */
  static boolean isNamed(String label, String title) {
    Set<String> named = words(title);
    return words(label.replaceAll("\\([^)]*\\)", " ")).stream().anyMatch(named::contains);
  }

  private static Set<String> words(String text) {
    return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .filter(word -> word.length() >= SHORTEST && !PLAIN.contains(word))
        .map(NamedInTitle::singular)
        .collect(Collectors.toUnmodifiableSet());
  }

  private static String singular(String word) {
    if (word.endsWith("ies")) {
      return word.substring(0, word.length() - 3) + "y";
    }
    return word.endsWith("s") && !word.endsWith("ss") ? word.substring(0, word.length() - 1) : word;
  }
}
