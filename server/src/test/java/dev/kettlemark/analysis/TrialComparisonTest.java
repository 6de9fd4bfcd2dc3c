package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** By hand unless a source stands at the check. */
class TrialComparisonTest {

  /** 800 g of dry sucrose and 200 g of water. */
  private static final String SYRUP = """
      ingredient sucrose
        contains  100 % sucrose
      formula syrup
        version   2 on 2026-03-01
        percent   of charge
        batch     1000 g
      stage pan
        80 %      sucrose
        20 %      water
        cook      to 120 °C ± 1
      """;

  private static final String FOAM = """
      formula beaten
        percent   of charge
        batch     1000 g
        expect    density 0.20-0.30 g/mL
      stage foam
        60 %      egg-white-pasteurised
        40 %      caster-sugar
        whip      on high until stiff-peak
      """;

  /** 800 g of 889 g are 90 % solids: candy handbooks give 123 °C, from memory; the probe is off by 2 °C. */
  @Test
  void infersTheWaterAndTheProbeFromTheCookedWeight() {
    ProbeReading probe = only(SYRUP, "measured 125 °C end of pan", "measured 889 g weight of pan")
        .probes()
        .get(0);
    assertEquals(89.0 / 889, probe.waterByWeight().orElse(Ratio.ZERO).fraction(), 1e-9);
    assertEquals(123, probe.boilsAt().map(Temperature::celsius).orElse(Double.NaN), 2);
    assertEquals(2, probe.probeError().map(error -> error.celsius()).orElse(Double.NaN), 2);
  }

  @Test
  void knowsNoWaterOfAWeightThatCannotBe() {
    ProbeReading probe = only(SYRUP, "measured 125 °C end of pan", "measured 790 g weight of pan")
        .probes()
        .get(0);
    assertFalse(probe.waterByWeight().isKnown());
    assertFalse(probe.probeError().isKnown());
  }

  /** Twice the batch leaves twice the weight. */
  @Test
  void predictsForTheBatchOfTheTrial() {
    TrialReading one = only(SYRUP, "measured 900 g weight of pan").readings().get(0);
    TrialReading two =
        only(SYRUP, "batch 2000 g", "measured 900 g weight of pan").readings().get(0);
    assertEquals(2 * best(one), best(two), 1e-6);
    assertEquals(TrialReading.Verdict.BELOW, two.verdict());
  }

  /** Water boils at 92.5 °C at 2240 m (ISO 2533, IAPWS-IF97), so 120 °C leaves less of it there. */
  @Test
  void predictsForTheHouseOfTheTrial() {
    String high = "house mountain\n  altitude 2240 m\n";
    String low = "house coast\n  altitude 0 m\n";
    double there = best(compare(low + high + SYRUP, "at mountain", "measured 900 g weight of pan")
        .readings()
        .get(0));
    double here = best(compare(low + high + SYRUP, "at coast", "measured 900 g weight of pan")
        .readings()
        .get(0));
    assertTrue(there < here - 10, there + " " + here);
    assertTrue(there > 800);
  }

  @Test
  void asksTheStepForTheEndOfACook() {
    TrialReading end = only(SYRUP, "measured 121.5 °C end of pan").readings().get(0);
    assertEquals(120, best(end), 1e-9);
    assertEquals(1.5, end.difference().orElse(Double.NaN), 1e-9);
    assertTrue(end.isOutsideWanted());
  }

  /** 0.30 g/mL against the 1.20 g/mL of its composition: (1.20 − 0.30)/0.30 = 300 %. */
  @Test
  void turnsADensityIntoAir() {
    TrialComparison compared = only(FOAM, "measured 0.30 g/mL density of foam");
    AirReading air = compared.airs().get(0);
    double solid = air.withoutAir().map(d -> d.gramsPerMillilitre()).orElse(Double.NaN);
    assertEquals(1.20, solid, 0.02);
    assertEquals((solid - 0.30) / 0.30, air.overrun().orElse(Ratio.ZERO).fraction(), 1e-9);
    assertTrue(compared.readings().get(0).predicted().isKnown());
    assertTrue(compared.readings().get(0).wanted().isPresent());
    assertFalse(compared.readings().get(0).isOutsideWanted());
  }

  @Test
  void readsTheSameThingInEachOfItsForms() {
    for (String line : List.of(
        "measured 10 % water of pan",
        "measured 10 % moisture of pan", "measured 90 % solids of pan")) {
      TrialReading reading = only(SYRUP, line).readings().get(0);
      assertTrue(reading.predicted().isKnown(), line);
    }
    for (String line : List.of("measured 0.5 aw pan at 24 h", "measured 0.5 aw aw of pan")) {
      assertEquals(
          TrialQuantity.ACTIVITY,
          only(SYRUP, line).readings().get(0).measurement().quantity(),
          line);
    }
  }

  /** 874 g are left; at 40 g a piece that is 21 whole pieces of 874/40 = 21.9. */
  @Test
  void countsWholePieces() {
    TrialReading pieces = only(SYRUP, "measured 20 pieces of 40 g").readings().get(0);
    double cooked = best(only(SYRUP, "measured 1 g weight of pan").readings().get(0));
    assertEquals(Math.floor(cooked / 40), best(pieces), 1e-9);
  }

  @Test
  void saysWhyThereIsNoPrediction() {
    assertEquals(
        "no model speaks of this, or the stage is not there", because("measured 3.2 pH pan"));
    assertEquals(
        "no model speaks of this, or the stage is not there",
        because("measured 100 g weight of nothing"));
    assertTrue(
        because("measured 850 g finished").startsWith("the formula states no handling loss"));
    assertEquals(
        "neither trial nor formula says what a piece weighs", because("measured 20 pieces"));
    assertEquals(
        "stage `pan` has no step `stream sucrose`",
        because("measured 80 °C stream sucrose of pan"));
  }

  @Test
  void tellsAnOlderVersionByDayAndByNumber() {
    assertTrue(compare(SYRUP, "on 2026-02-28").isOlder());
    assertFalse(compare(SYRUP, "on 2026-03-01").isOlder());
    assertTrue(compare(SYRUP, "on 2026-03-02", "version 1").isOlder());
    assertFalse(compare(SYRUP, "on 2026-02-01", "version 2").isOlder());
  }

  @Test
  void takesNoCorrectionFromWhatIsNoEvidence() {
    String readings = "measured 125 °C end of pan\n  measured 889 g weight of pan";
    assertEquals(2, count(compare(SYRUP, "", readings)));
    assertEquals(0, count(compare(SYRUP, "on 2026-02-01", readings)));
    assertEquals(0, count(compare(SYRUP, "", readings, "changed \"another pan\"")));
  }

  /** Water of 80 °C into as much of 20 °C, 47 °C read: 10 % of the heat is gone. */
  @Test
  void fitsTheHeatThatTheBowlTakes() {
    String mix = """
        formula mix
          percent   of charge
          batch     1000 g
        stage hot
          50 %      water
          warm      to 80 °C
        stage bowl
          50 %      water at 20 °C
          all of    hot
          pour      hot into water
        """;
    Correction heat = HouseCorrections.of(
            List.of(compareAs(mix, "mix", "", "measured 47 °C pour hot of bowl")))
        .of(CorrectionQuantity.HEAT_TAKEN)
        .orElseThrow();
    assertEquals(10, heat.mean(), 0.6);
  }

  @Test
  void answersNothingForAFormulaThatIsNotThere() {
    Snapshot snapshot = snapshot("trial T-1 of nothing\n  measured 3 g weight of pan\n");
    assertEquals(List.of(), Trials.all(snapshot));
  }

  private static int count(TrialComparison trial) {
    return HouseCorrections.of(List.of(trial)).corrections().size();
  }

  private static String because(String line) {
    return only(SYRUP, line)
        .readings()
        .get(0)
        .predicted()
        .fold(known -> "known", unknown -> unknown.because());
  }

  private static double best(TrialReading reading) {
    return reading.predicted().map(Prediction::best).orElse(Double.NaN);
  }

  private static TrialComparison only(String formula, String... lines) {
    return compare(formula, "", lines);
  }

  private static TrialComparison compare(String formula, String clauses, String... lines) {
    return compareAs(
        formula, formula.contains("formula syrup") ? "syrup" : "beaten", clauses, lines);
  }

  private static TrialComparison compareAs(
      String formula, String name, String clauses, String... lines) {
    String text = formula + "trial T-1 of " + name + " " + clauses + "\n  "
        + String.join("\n  ", lines) + "\n";
    Snapshot snapshot = snapshot(text);
    return Optional.of(snapshot.library().entries(Kind.TRIAL).get(0))
        .flatMap(entry -> snapshot.result(Trials.COMPARED, entry))
        .orElseThrow();
  }

  private static Snapshot snapshot(String text) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(Document.of("bench.kettle", text));
    return Snapshot.of(Library.of(all));
  }
}
