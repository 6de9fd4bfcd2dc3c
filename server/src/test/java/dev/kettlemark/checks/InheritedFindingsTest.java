package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.library.Document;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A variant is told what it writes itself, and of its parent's lines only what is new. */
class InheritedFindingsTest {

  @Test
  void leavesTheParentsTotalToTheParent() {
    assertEquals(
        List.of("a.kettle:1:9: error total-off: the lines add up to 98.00 %, 2.00 % too little"),
        findings("""
            formula syrup
            stage pan
              49.00 % white-sugar
              49.00 % water
            variant syrup-two of syrup
              replace white-sugar by 49.00 % honey
            variant syrup-three of syrup-two
              replace water by 49.00 % raspberry-puree
            """, "total-off"));
  }

  @Test
  void tellsTheVariantOfItsOwnMistakeInTheSameWords() {
    assertEquals(
        List.of(
            "a.kettle:4:11: error missing-scale: 120 of which scale: 120 °C is 248 °F, 120 °F is 49 °C",
            "a.kettle:7:11: error missing-scale: 120 of which scale: 120 °C is 248 °F, 120 °F is 49 °C"),
        findings("""
            formula syrup
            stage pan
              q.s. white-sugar
              cook to 120
            variant syrup-two of syrup
            stage pan again
              cook to 120
            """, "missing-scale"));
  }

  private static List<String> findings(String text, String rule) {
    return Listing.findings(List.of(Document.of("a.kettle", text))).stream()
        .map(Listing.Shown::line)
        .filter(line -> line.contains(rule))
        .toList();
  }
}
