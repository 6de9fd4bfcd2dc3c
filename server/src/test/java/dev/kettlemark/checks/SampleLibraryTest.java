package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Pinned;
import dev.kettlemark.SampleTexts;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sample library is what good formulas look like, so nothing may be held against it. */
class SampleLibraryTest {

  private static final List<Listing.Shown> FINDINGS = Listing.findings(SampleTexts.library());

  @Test
  void theSamplesAreFreeOfErrorsAndWarnings() {
    List<String> grave = FINDINGS.stream()
        .filter(finding -> finding.severity().compareTo(Severity.WARNING) <= 0)
        .map(Listing.Shown::line)
        .toList();
    assertEquals(List.of(), grave);
  }

  @Test
  void whatElseIsWorthKnowingIsListed() {
    Pinned.resource("checks/gannet-slip.txt")
        .check(Listing.text(FINDINGS), SampleLibraryTest.class);
  }
}
