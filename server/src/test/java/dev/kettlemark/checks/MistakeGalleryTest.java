package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Pinned;
import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each file of the gallery is a library of its own with one mistake, and is found out. */
class MistakeGalleryTest {

  /** What cannot be shown without something else, which is told at its own place. */
  private static final Map<String, Set<String>> TOGETHER = Map.of(
      // The formula that uses a wrong mix tells of it, and so does the mix.
      "material-total-off", Set.of("total-off"),
      // So much spirit is also more than is usual of it.
      "spirit-on-gel", Set.of("over-usual-dose"),
      // What is accepted without a reason is not accepted.
      "unfilled-reason", Set.of("unused-stage"),
      // The variant tells that its parent went on, and the trial that it is an old one.
      "variant-changed-since-trial", Set.of("trial-of-older-version"));

  private static Set<String> besides(Document document) {
    String name = document.uri().replaceAll(".*/|[.]kettle$", "");
    return TOGETHER.getOrDefault(name, Set.of());
  }

  @Test
  void theFindingsOfEachFileAreThoseListed() {
    List<Listing.Shown> findings = SampleTexts.mistakes().stream()
        .flatMap(document -> Listing.findings(List.of(document)).stream())
        .toList();
    Pinned.resource("checks/mistakes.txt").check(Listing.text(findings), MistakeGalleryTest.class);
  }

  @ParameterizedTest
  @MethodSource("dev.kettlemark.SampleTexts#mistakes")
  void eachFileShowsOneKindOfMistake(Document document) {
    List<String> rules = Listing.findings(List.of(document)).stream()
        .map(Listing.Shown::rule)
        .distinct()
        .toList();
    List<String> alone =
        rules.stream().filter(rule -> !besides(document).contains(rule)).toList();
    assertEquals(1, alone.size(), () -> document.uri() + " shows " + rules);
  }
}
