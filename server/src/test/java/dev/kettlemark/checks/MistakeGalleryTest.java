package dev.kettlemark.checks;

import dev.kettlemark.Pinned;
import dev.kettlemark.SampleTexts;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each file of the gallery is a library of its own with one mistake, and is found out. */
class MistakeGalleryTest {

  @Test
  void theFindingsOfEachFileAreThoseListed() {
    List<Listing.Shown> findings = SampleTexts.mistakes().stream()
        .flatMap(document -> Listing.findings(List.of(document)).stream())
        .toList();
    Pinned.resource("checks/mistakes.txt").check(Listing.text(findings), MistakeGalleryTest.class);
  }
}
