package dev.kettlemark.labelling;

import java.util.List;
import java.util.Optional;

/**
 * What is made of an allergen and needs no statement all the same.
 *
 * @param words the allergens of the pantry that it frees from
 * @param phrases of which one stands in the ingredient's label
 */
record Exemption(Market market, List<String> words, List<String> phrases, Law law) {

  private static final List<Exemption> ALL = LawTable.read("exemptions.txt").stream()
      .map(row -> new Exemption(
          row.market().orElseThrow(), row.list("words"), row.list("phrases"), row.law()))
      .toList();

  Exemption {
    words = List.copyOf(words);
    phrases = List.copyOf(phrases);
  }

  /** What frees a use of an ingredient from stating an allergen. */
  static Optional<Exemption> of(Market market, String word, IngredientUse use) {
    return ALL.stream()
        .filter(exemption -> exemption.market() == market && exemption.words().contains(word))
        .filter(exemption -> exemption.phrases().stream()
            .anyMatch(phrase ->
                use.plainNames().stream().anyMatch(name -> name.contains(Phrase.plain(phrase)))))
        .findFirst();
  }
}
