package dev.kettlemark.labelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.Vocabulary;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every row of the tables has its law, and the tables know all words of the language and no others. */
class LawTablesTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"allergens.txt", "exemptions.txt", "claims.txt", "cautions.txt", "additives.txt"})
  void eachRowSaysWhereItIsFrom(String table) {
    for (LawTable.Row row : LawTable.read(table)) {
      assertFalse(row.law().citation().isBlank(), row.toString());
      boolean isPractice = row.law().citation().equals("common practice, no source");
      assertEquals(!isPractice, row.law().since().isPresent(), row.toString());
      assertTrue(
          Set.of("from memory", "read", "common practice").contains(row.law().read()),
          row.toString());
    }
  }

  @Test
  void everyClaimOfTheLanguageIsJudgedInEachMarket() {
    Set<String> words = new HashSet<>(Vocabulary.words("claim"));
    // No law speaks of it; the check of sweetness does.
    words.remove("as-sweet");
    for (Market market : Market.values()) {
      assertEquals(
          words,
          ClaimRule.all().stream()
              .filter(rule -> rule.market() == market)
              .map(ClaimRule::claim)
              .collect(Collectors.toSet()));
    }
  }

  @Test
  void everyAllergenOfTheLanguageIsListedSomewhere() {
    Set<String> listed = Stream.of(Market.values())
        .flatMap(market -> AllergenGroup.of(market).stream())
        .flatMap(group -> group.words().stream())
        .collect(Collectors.toSet());
    assertEquals(Vocabulary.words("allergen"), listed);
  }

  @Test
  void everyCautionOfTheTableIsAWordOfTheLanguage() {
    CautionRule.all()
        .forEach(rule -> assertTrue(Vocabulary.knows("caution", rule.caution()), rule.caution()));
  }

  @Test
  void everyMarketOfTheLanguageIsKnown() {
    Vocabulary.of("market")
        .forEach(term -> assertTrue(Market.ofWord(term.word()).isPresent(), term.word()));
  }
}
