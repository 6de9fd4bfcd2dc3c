package dev.kettlemark.science;

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
    assertTrue(CheckTable.all().size() > 90, "rows have been lost");
    assertTrue(new HashSet<>(CheckTable.all()).size() == CheckTable.all().size());
  }

  @Test
  void anUnknownAnswerNeverPasses() {
    Check check =
        new Check("model", "subject", "", 1, Double.NaN, Double.MAX_VALUE, "source", false);
    assertTrue(!check.passes());
  }
}
