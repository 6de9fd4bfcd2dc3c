package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A right library with one thing made wrong: that is told, and nothing else. */
class MutationTableTest {

  private static final MutationTable TABLE = MutationTable.read();

  /** A mistake that takes more than one place is the exception. */
  private static final int MOST_OF_SEVERAL_PLACES = 20;

  private static final int MOST_PLACES = 3;

  private static final int LEAST_MUTATIONS = 200;

  static List<Mutation> mutations() {
    return TABLE.rows();
  }

  @ParameterizedTest
  @MethodSource("mutations")
  void isToldOnceAndByItsRule(Mutation mutation) {
    List<SpoiltLibrary.Told> told = SpoiltLibrary.toldOf(mutation);
    assertTrue(
        told.stream().anyMatch(finding -> finding.rule().equals(mutation.rule())),
        () -> mutation + " is not told; instead " + told);
    List<SpoiltLibrary.Told> others =
        told.stream().filter(finding -> !finding.rule().equals(mutation.rule())).toList();
    assertEquals(List.of(), others.stream().filter(SpoiltLibrary.Told::isGrave).toList());
    assertEquals(
        mutation.also(),
        others.stream().map(SpoiltLibrary.Told::rule).distinct().sorted().toList(),
        () -> mutation + " also tells " + others);
  }

  @Test
  void mostMistakesAreMadeInOnePlace() {
    List<Mutation> several =
        TABLE.rows().stream().filter(mutation -> mutation.edits().size() > 1).toList();
    assertTrue(several.size() <= MOST_OF_SEVERAL_PLACES, () -> several.size() + ": " + several);
    assertTrue(several.stream().allMatch(mutation -> mutation.edits().size() <= MOST_PLACES));
    assertTrue(several.stream()
        .allMatch(mutation ->
            mutation.edits().stream().allMatch(edit -> edit.file().equals(mutation.file()))));
    assertTrue(TABLE.rows().size() >= LEAST_MUTATIONS);
  }

  @Test
  void everyRuleHasAMutationOrAReasonForNone() {
    Set<String> mutated = TABLE.rows().stream().map(Mutation::rule).collect(Collectors.toSet());
    Set<String> without = new TreeSet<>();
    for (Rule rule : Rules.all()) {
      if (!mutated.contains(rule.info().id())) {
        without.add(rule.info().id());
      }
    }
    assertEquals(without, new TreeSet<>(TABLE.without().keySet()));
    assertTrue(TABLE.without().values().stream().noneMatch(String::isBlank));
  }

  @Test
  void theGroupsAreThoseOfTheCatalogue() {
    List<String> groups = TABLE.rows().stream().map(Mutation::group).distinct().toList();
    assertEquals(Catalogue.read().groups().stream().filter(groups::contains).toList(), groups);
    assertTrue(groups.size() == Catalogue.read().groups().size());
  }
}
