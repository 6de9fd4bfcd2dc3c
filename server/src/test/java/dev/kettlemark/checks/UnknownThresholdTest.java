package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnknownThresholdTest {

  private final RuleFixture unknownThreshold = RuleFixture.of(new UnknownThreshold());

  @Test
  void proposesTheNearestThreshold() {
    String text = """
        house quay
          threshold total-tolerence 0.1 % "our scales"
        """;
    unknownThreshold.check("""
        house quay
          threshold total-tolerence 0.1 % "our scales"
                    ^^^^^^^^^^^^^^^ unknown-threshold: there is no threshold `total-tolerence`; did you mean `total-tolerance`?
        """);
    unknownThreshold.checkFix(
        "Write `total-tolerance`", text, text.replace("tolerence", "tolerance"));
  }

  @Test
  void leavesKnownThresholdsAlone() {
    unknownThreshold.check("""
        house quay
          threshold total-tolerance 1 g
          threshold hot-syrup 90 °C "a soft foam"
        """);
  }
}
