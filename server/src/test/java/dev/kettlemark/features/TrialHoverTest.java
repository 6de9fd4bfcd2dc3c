package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The samples' figures are invented; what the model says of them is pinned, its science is tested with it. */
class TrialHoverTest {

  private static final String SYRUP = """
      house coast
        altitude  0 m
      formula syrup
        version   2 on 2026-03-01
        percent   of charge
        batch     1000 g
      stage pan
        80 %      white-sugar
        20 %      water
        cook      to 120 °C ± 1
      """;

  private static String trial(String name, String... lines) {
    return "trial " + name + " of syrup on 2026-03-02 at coast\n  " + String.join("\n  ", lines)
        + "\n";
  }

  private static String hover(String marked) {
    return FeatureFixture.of(marked).hover();
  }

  @Test
  void holdsAMeasurementAgainstItsPrediction() {
    assertEquals(
        """
        **123.0 °C = 253 °F** end of pan

        Predicted 120.0 ± 1.0 °C; difference +3.0 °C, above the band.

        end of pan: the formula asks for 119.0–121.0 °C, and this lies outside.

        pan: 889.0 g leave 10.0 % water, which boils at 122.3 °C; the probe read 123.0 °C, 0.7 °C more, within the error of the model.""",
        hover(SYRUP
            + trial("T-1", "measured  12<|>3 °C end of pan", "measured 889 g weight of pan")));
  }

  @Test
  void answersAtTheWordToo() {
    assertTrue(
        hover(SYRUP + trial("T-1", "meas<|>ured 0.40 aw of pan")).contains("below the band"));
  }

  @Test
  void saysWhyThereIsNoPrediction() {
    assertTrue(hover(SYRUP + trial("T-1", "measured 3<|>.2 pH pan")).contains("no prediction"));
  }

  @Test
  void showsTheWholeTrialAtItsName() {
    assertEquals(
        """
        **T-1** — trial of `syrup`

        A batch of 1000 g, made by version 2 of 2026-03-01.

        | of | measured | predicted | difference |  |
        | :-- | --: | --: | --: | --: |
        | end of pan | 123.0 °C | 120.0 ± 1.0 | +3.0 °C | above the band |
        | weight of pan | 889.0 g | 899.9 ± 9.0 | -10.9 g | below the band |

        end of pan: the formula asks for 119.0–121.0 °C, and this lies outside.

        pan: 889.0 g leave 10.0 % water, which boils at 122.3 °C; the probe read 123.0 °C, 0.7 °C more, within the error of the model.""",
        hover(SYRUP
            + trial("T<|>-1", "measured  123 °C end of pan", "measured 889 g weight of pan")));
  }

  @Test
  void leavesTheStageToItsOwnAnswer() {
    assertTrue(
        hover(SYRUP + trial("T-1", "measured 889 g weight of p<|>an")).contains("stage `pan`"));
  }

  @Test
  void tellsACorrectionBesideThePredictionOnceThereAreThreeTrials() {
    String two = trial("T-1", "measured 120 °C end of pan", "measured 880 g weight of pan")
        + trial("T-2", "measured 120 °C end of pan", "measured 881 g weight of pan");
    String few = hover(SYRUP.replace("stage pan", "stage p<|>an") + two);
    assertTrue(few.contains("too few to correct (n = 2)"), few);
    assertFalse(few.contains("House correction"), few);
    String enough = hover(SYRUP.replace("stage pan", "stage p<|>an")
        + two
        + trial("T-3", "measured 120 °C end of pan", "measured 882 g weight of pan"));
    assertTrue(enough.contains("House correction from 3 trials"), enough);
    // The prediction itself stays what it was.
    String none = hover(SYRUP.replace("stage pan", "stage p<|>an"));
    assertTrue(enough.startsWith(none), enough);
    assertEquals("""
        - House correction from 3 trials: water left -1.9 points → water 9.2 %, 881 g.
        - House correction from 3 trials: thermometer -4.3 °C → if it is the probe, cook until it shows 115.7 °C.""", enough.substring(none.length()).strip());
  }

  /** One point of water may be the boiling model's own. */
  @Test
  void accusesNoThermometerForTheErrorOfTheModel() {
    String told = hover(SYRUP.replace("stage pan", "stage p<|>an")
        + trial("T-1", "measured 120 °C end of pan", "measured 895 g weight of pan"));
    assertTrue(told.contains("water left"), told);
    assertFalse(told.contains("thermometer"), told);
  }
}
