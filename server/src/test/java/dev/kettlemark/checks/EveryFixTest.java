package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.Today;
import dev.kettlemark.checks.TriedFix.Mending;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each fix leaves a text without what it mends, in the example of each rule and in the gallery. */
class EveryFixTest {

  private static final List<Document> PANTRY = Pantry.documents();

  /**
   * What a fix may bring that was not there before, since only a person can go on from there.
   *
   * <p>Nobody but the writer knows which of several readings was meant, and a reading that was not
   * meant shows itself by what is then told.
   */
  private static final Map<Mending, Set<String>> LEAVING = Map.ofEntries(
      // Only once it is weighed does anybody know how much it is.
      left("spooned-gum: Weigh …", "agent-overdose"),

      // One of several readings.
      left("missing-scale: Write …", "impossible-room"),
      left("comma-in-number: Write …", "below-scale", "whisk-out-of-reach"),
      left("ambiguous-ounce: Write …, if it was fluid ounces", "negative-rest"),
      left("split-basis-member: Write …", "below-scale"),
      left("missing-percent-basis: Add …", "foam-powder-water", "moisture-off"),
      left("below-boiling: Write …", "thin-pectin-mass"),
      left("unknown-ingredient: Describe …", "unweighed-object"),
      left("contradicting-solids: Cook to … °C", "texture-mismatch"),
      left("stage-name-mismatch: Cook to … °C", "expectation-off", "texture-mismatch"),
      left("texture-mismatch: Write …", "expectation-off"),

      // Another mass comes out, and what was expected of the old one is for a person to say anew.
      left(
          "two-sufficient: Write … of …, an equal part of the rest, and adjust it",
          "expectation-off"),
      left("long-boil: Lower the water to … % of the pan", "expectation-off"),
      left("too-little-doctor: Swap part of … for …", "expectation-off"),
      left("too-much-doctor: Swap part of … for …", "expectation-off"),
      left("over-usual-dose: Lower it to … % and scale the rest", "expectation-off"),
      left("thin-pectin-mass: Take … instead", "expectation-off"),
      left("early-density-check: Check it behind the last addition", "expectation-off"),

      // How much water was meant, the sum of the others does not tell.
      left("negative-rest: Take … % off …", "already-concentrated"),
      // Once it is dissolved, it sets at its own temperature, and that counts for what follows.
      left("unboiled-agent: Boil … in its water", "deposit-below-setting"),
      // A mass that is said to gel is held against the law for what gels.
      left("gums-that-gel-together: Add …", "additive-not-permitted"),
      // Without the change, the egg or the honey of the parent is back.
      left("change-without-target: Remove the change", "claim-not-true", "missing-caution"),
      // The whisk takes it, but a foam so light still runs over.
      left("overfull-bowl: Set the batch to … g", "bowl-overflow"));

  private static Map.Entry<Mending, Set<String>> left(String mending, String... rules) {
    int colon = mending.indexOf(": ");
    return Map.entry(
        new Mending(mending.substring(0, colon), mending.substring(colon + 2)), Set.of(rules));
  }

  static Stream<Document> texts() {
    Stream<Document> pages = Rules.all().stream().map(rule -> RulePagesTest.block(rule, "Example"));
    return Stream.concat(pages, SampleTexts.mistakes().stream());
  }

  @ParameterizedTest
  @MethodSource("texts")
  void mendsWhatItStandsAtAndBringsNothingNew(Document document) {
    assertEquals(
        List.of(), failures(TriedFix.allOf(snapshot(document), List.of(document), document)));
  }

  /** In the samples with one thing made wrong, where a file leans on others. */
  @ParameterizedTest
  @MethodSource("dev.kettlemark.checks.MutationTableTest#mutations")
  void mendsTheSpoiltSamples(Mutation mutation) {
    assertEquals(List.of(), failures(SpoiltLibrary.fixesOf(mutation)));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void safeFixesLeaveNothingSafe(Document document) {
    SafeFixes once = SafeFixes.of(snapshot(document), document);
    SafeFixes twice = SafeFixes.of(snapshot(once.document()), once.document());
    assertEquals(List.of(), twice.applied());
  }

  @Test
  void eachRuleOffersAFixOrSaysWhyNot() {
    Set<String> without =
        Rules.all().stream().map(rule -> rule.info().id()).collect(Collectors.toSet());
    without.removeAll(Mends.found().any());
    assertEquals(new TreeSet<>(Mends.NONE.keySet()), new TreeSet<>(without));
  }

  /** A fix may leave work behind, but none of it may be an error or a warning that was not there before. */
  private static List<String> failures(List<TriedFix> fixes) {
    List<String> failures = new ArrayList<>();
    for (TriedFix fix : fixes) {
      List<String> faults = new ArrayList<>(fix.faults());
      fix.news().stream()
          .filter(news -> !LEAVING.getOrDefault(fix.mending(), Set.of()).contains(news))
          .map(news -> "brings " + news)
          .forEach(faults::add);
      if (!faults.isEmpty()) {
        failures.add(fix.described(faults));
      }
    }
    return failures;
  }

  private static Snapshot snapshot(Document document) {
    List<Document> all = new ArrayList<>(PANTRY);
    all.add(document);
    return Snapshot.of(Library.of(all), Today.DAY);
  }
}
