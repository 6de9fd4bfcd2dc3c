package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MismatchedThresholdTest {

  private final RuleFixture mismatchedThreshold = RuleFixture.of(new MismatchedThreshold());

  @Test
  void tellsWhatKindOfFigureIsCompared() {
    mismatchedThreshold.check("""
        house quay
          threshold total-tolerance 1 g
                                    ^^^ mismatched-threshold: `total-tolerance` is a share, as in `5 %`, not 1 g
          threshold hot-syrup 90-95 °C
                              ^^^^^^^^ mismatched-threshold: `hot-syrup` is a temperature, as in `95 °C`, not 90-95 °C
          threshold usual-cook 180 °C
                               ^^^^^^ mismatched-threshold: `usual-cook` is a range of temperatures, as in `100-180 °C`, not 180 °C
          threshold sugar-stage-slack 4
                                      ^ mismatched-threshold: `sugar-stage-slack` is a difference of temperatures, as in `4 °C`, not 4
        """);
  }

  @Test
  void refusesWhatCannotBe() {
    mismatchedThreshold.check("""
        house quay
          threshold total-tolerance -1 %
                                    ^^^^ mismatched-threshold: `total-tolerance` is a share, as in `5 %`, not -1 %
          threshold sugar-stage-slack -4 °C
                                      ^^^^^ mismatched-threshold: `sugar-stage-slack` is a difference of temperatures, as in `4 °C`, not -4 °C
        """);
  }

  @Test
  void takesEitherScaleAndEveryUnitOfTheKind() {
    mismatchedThreshold.check("""
        house quay
          threshold total-tolerance 500 ppm
          threshold hot-syrup 200 °F
          threshold sugar-stage-slack 7 °F
          threshold usual-cook 212-356 °F
        """);
  }
}
