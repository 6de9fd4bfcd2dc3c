package dev.kettlemark.labelling;

import java.util.List;
import java.util.Optional;

/**
 * When a caution ought to be carried.
 *
 * @param market empty where it holds everywhere
 * @param caution the word of the language
 * @param test which question decides
 * @param phrases the values as words to look for in names
 * @param isGrave whether somebody gets hurt who cannot know
 * @param statement what a label may say
 */
record CautionRule(
    Optional<Market> market,
    String caution,
    String test,
    List<String> values,
    List<Phrase> phrases,
    boolean isGrave,
    String statement,
    Law law) {

  private static final List<CautionRule> ALL = LawTable.read("cautions.txt").stream()
      .map(row -> new CautionRule(
          row.market(),
          row.text("caution"),
          row.text("test"),
          row.list("values"),
          Phrase.all(row.list("values")),
          row.text("grave").equals("yes"),
          row.text("statement"),
          row.law()))
      .toList();

  CautionRule {
    values = List.copyOf(values);
    phrases = List.copyOf(phrases);
  }

  static List<CautionRule> all() {
    return ALL;
  }

  boolean holdsIn(List<Market> markets) {
    return market.isEmpty() || markets.contains(market.get());
  }
}
