package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Pinned;
import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each file of the gallery is a library of its own with one mistake, and is found out. */
class MistakeGalleryTest {

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
    assertEquals(1, rules.size(), () -> document.uri() + " shows " + rules);
  }
}
