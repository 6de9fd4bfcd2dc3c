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
record ClaimRule(Market market, String claim, String test, List<String> values, Law law) {

  private static final List<ClaimRule> ALL = LawTable.read("claims.txt").stream()
      .map(row -> new ClaimRule(
          row.market().orElseThrow(),
          row.text("claim"),
          row.text("test"),
          row.list("values"),
          row.law()))
      .toList();

  ClaimRule {
    values = List.copyOf(values);
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
