package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CheckTableTest {

  static List<Check> published() {
    return CheckTable.all();
  }

  @ParameterizedTest
  @MethodSource("published")
  void agreesWithPrint(Check check) {
    assertTrue(check.passes(), () -> "off by " + check.difference() + ": " + check);
  }

  @Test
  void namesASourceForEveryRow() {
    assertTrue(CheckTable.all().stream().noneMatch(check -> check.source().isBlank()));
  }

  @Test
  void holdsNoRowTwice() {
    assertTrue(CheckTable.all().size() > 600, "rows have been lost");
    assertTrue(new HashSet<>(CheckTable.all()).size() == CheckTable.all().size());
  }

  @Test
  void recomputedFiguresAgreeToTheirLastDigits() {
    long loose = CheckTable.all().stream()
        .filter(check -> !check.isPublished())
        .filter(check -> check.tolerance() > Math.max(1, Math.abs(check.published()) * 0.01))
        .filter(check -> !check.subject().startsWith("agave"))
        .count();
    assertEquals(0, loose);
  }

  /** A figure that the models do follow belongs into the table of checks. */
  @Test
  void contradictionsContradict() {
    List<String> agreeing = Contradictions.all().stream()
        .map(Contradiction::check)
        .filter(Check::passes)
        .map(Check::subject)
        .toList();
    assertEquals(List.of(), agreeing);
    assertTrue(Contradictions.all().stream().noneMatch(one -> one.because().isBlank()));
  }

  @Test
  void anUnknownAnswerNeverPasses() {
    Check check = new Check(
        "model", "subject", "", 1, Double.NaN, Double.MAX_VALUE, "source", Check.Provenance.READ);
    assertTrue(!check.passes());
  }
}
