package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.kettlemark.Pinned;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The page of all rules is what the program says, and the catalogue of mistakes speaks of all rules. */
class RulesPageTest {

  private static final Catalogue CATALOGUE = Catalogue.read();

  @Test
  void thePageIsWrittenFromTheProgram() {
    Pinned.file(Path.of("RULES.md")).check(RuleTables.page(), RulesPageTest.class);
  }

  @Test
  void eachRuleFindsSomeMistakeOfTheCatalogue() {
    List<String> missing = Rules.all().stream()
        .map(Rule::info)
        .filter(rule -> CATALOGUE.of(rule).isEmpty())
        .map(RuleInfo::id)
        .toList();
    assertEquals(List.of(), missing, "rules without a row in " + Catalogue.FILE);
  }

  @Test
  void eachRuleNamedInTheCatalogueExists() {
    Set<String> ids =
        Rules.all().stream().map(rule -> rule.info().id()).collect(Collectors.toSet());
    List<String> unknown = CATALOGUE.rows().stream()
        .flatMap(row -> row.rules().stream())
        .filter(id -> !ids.contains(id))
        .toList();
    assertEquals(List.of(), unknown);
  }

  @Test
  void noMistakeIsListedTwiceOrWithoutAnAnswer() {
    List<String> mistakes =
        CATALOGUE.rows().stream().map(Catalogue.Row::mistake).toList();
    assertEquals(mistakes.stream().distinct().toList(), mistakes);
    for (Catalogue.Row row : CATALOGUE.rows()) {
      assertFalse(row.group().isBlank(), row.mistake());
      assertFalse(row.rules().isEmpty() && row.whyNot().isBlank(), row.mistake());
    }
  }

  @Test
  void aRowWithoutAnArrowIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Catalogue.of("a mistake that nobody finds"));
  }
}
