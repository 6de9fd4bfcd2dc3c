package dev.kettlemark.labelling;

import java.util.List;
import java.util.Optional;

/**
 * What a claim asks for in a market.
 *
 * @param claim the word of the language
 * @param test which question decides
 * @param values what the question is about
 */
public record ClaimRule(Market market, String claim, String test, List<String> values, Law law) {

  private static final List<ClaimRule> ALL = LawTable.read("claims.txt").stream()
      .map(row -> new ClaimRule(
          row.market().orElseThrow(),
          row.text("claim"),
          row.text("test"),
          row.list("values"),
          row.law()))
      .toList();

  public ClaimRule {
    values = List.copyOf(values);
  }

  /** The allergens, in the pantry's words, that a claim says are absent; none for other claims. */
  public static List<String> absent(String claim) {
    return ALL.stream()
        .filter(rule -> rule.claim().equals(claim) && rule.test().equals("free-from"))
        .flatMap(rule -> rule.values().stream())
        .distinct()
        .toList();
  }

  static List<ClaimRule> all() {
    return ALL;
  }

  static Optional<ClaimRule> of(Market market, String claim) {
    return ALL.stream()
        .filter(rule -> rule.market() == market && rule.claim().equals(claim))
        .findFirst();
  }
}
