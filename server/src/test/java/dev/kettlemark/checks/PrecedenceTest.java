package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.library.Document;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** One slip is told once; {@link MutationTableTest} looks at two hundred of them. */
class PrecedenceTest {

  private static final String BURNT = """
      formula pan-syrup
        percent of charge
        batch 1000 g
        expect yield 83 % ± 2
        caution hot-sugar
        ACCEPT
      stage syrup
        50.00 % white-sugar
        25.00 % glucose-syrup-42
        25.00 % water
        boil under lid for 3 min until dissolved
        cook to COOK
      """;

  @Test
  void ordersNameRulesThatThereAre() {
    Set<String> known =
        Rules.all().stream().map(rule -> rule.info().id()).collect(Collectors.toSet());
    Set<String> named = new TreeSet<>();
    Precedence.ORDERS.forEach(order -> {
      named.addAll(order.told());
      named.addAll(order.silent());
    });
    named.removeAll(known);
    assertEquals(Set.of(), named);
  }

  /** An amount that cannot be meant, and a claim that is wrong in a graver way, are the exceptions. */
  @Test
  void whoMayGetHurtIsToldOfItWhateverElseIsWrong() {
    Set<String> silenced = new TreeSet<>();
    for (Rule rule : Rules.all()) {
      String id = rule.info().id();
      Precedence.ORDERS.stream()
          .filter(order -> rule.info().safety() && order.silent().contains(id))
          .forEach(order -> order.told().forEach(told -> silenced.add(id + " by " + told)));
    }
    assertEquals(
        Set.of(
            "claim-in-shared-kitchen by claim-not-true",
            "claim-not-true by change-without-target",
            "missing-caution by change-without-target",
            "missing-caution by impossible-dose",
            "pan-boils-over by impossible-dose"),
        silenced);
  }

  @Test
  void nothingIsToldInsteadOfItself() {
    assertTrue(Precedence.ORDERS.stream()
        .allMatch(order -> order.told().stream().noneMatch(order.silent()::contains)));
  }

  @Test
  void theCauseIsToldAndNotWhatFollowsFromIt() {
    assertEquals(List.of("burning-syrup"), grave("244 °C ± 1", "status bench"));
  }

  @Test
  void whatFollowsComesBackOnceTheCauseIsMended() {
    assertEquals(List.of("expectation-off"), grave("106 °C ± 1", "status bench"));
  }

  @Test
  void whatIsAcceptedTellsNothingInsteadOfAnother() {
    assertEquals(
        List.of("expectation-off"),
        grave("244 °C ± 1", "accept burning-syrup \"a caramel for colour\""));
  }

  @Test
  void ofTwoThatAreAsGraveTheMoreExactIsTold() {
    assertEquals(List.of("browned-fructose"), rulesAt("""
            formula honey-foam
              percent of charge
              batch 1000 g
              texture chewy
              caution hot-sugar
              caution honey-infant
            stage foam
              14.00 % egg-white-pasteurised
              whip on medium until soft-peak
            stage first-syrup
              40.00 % white-sugar
              16.00 % water
              boil under lid for 3 min until dissolved
              cook to 140 °C
            stage second-syrup
              30.00 % honey
              cook to 138 °C
            stage body
              all of foam
              all of first-syrup
              all of second-syrup
              stream first-syrup into foam over 60 s while whisking on medium
              stream second-syrup into foam over 60 s while whisking on medium
              whip on medium until firm-peak
            """, "browned-fructose", "hot-second-syrup"));
  }

  private static List<String> grave(String cook, String accept) {
    return Listing.findings(List.of(
            Document.of("first.kettle", BURNT.replace("COOK", cook).replace("ACCEPT", accept))))
        .stream()
        .filter(finding -> finding.severity().compareTo(Severity.WARNING) <= 0)
        .map(Listing.Shown::rule)
        .distinct()
        .toList();
  }

  private static List<String> rulesAt(String text, String... rules) {
    return Listing.findings(List.of(Document.of("first.kettle", text))).stream()
        .map(Listing.Shown::rule)
        .filter(Set.of(rules)::contains)
        .distinct()
        .toList();
  }
}
