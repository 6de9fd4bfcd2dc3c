package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.features.Totals.Total;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Sums are checked against hand calculation. */
class TotalsTest {

  @Test
  void sumsStagesAndFormula() {
    check(
        """
        formula f
          percent of charge
          batch 1200 g
        stage foam
          9.30 % white-sugar
        stage body
          90.70 % water
          all of foam
          mix
        """,
        "f: 100.00 % · charge 1200 g · water 90.7 % · aw ≈ 0.97–1.00",
        "foam: foam · 9.30 % · 111.6 g",
        "body: body · 90.70 % · 1088.4 g + 111.6 g taken → 1200.0 g");
  }

  @Test
  void showsWhatCookingLeaves() {
    List<String> totals = totals("""
        formula f
          percent of charge
          batch 1000 g
        stage pan
          70 % white-sugar
          30 % water
          cook to 118 °C
        """);
    // Mass balance: 700 g of sugar, which boils at 118 °C with 12 to 13 % of water, makes 795 to
    // 805 g.
    assertTrue(
        totals
            .get(0)
            .matches(
                "f: 100.00 % · charge 1000 g → cooked (79\\d|80\\d) g \\((79|80)\\.\\d %\\) · water 1\\d\\.\\d % · aw ≈ 0\\.\\d\\d–0\\.\\d\\d"),
        totals.get(0));
    assertTrue(
        totals
            .get(1)
            .matches("pan: pan · 100.00 % · 1000.0 g → (79\\d|80\\d)\\.\\d g · water 1\\d\\.\\d %"),
        totals.get(1));
  }

  @Test
  void leavesWeightsOutWithoutABatch() {
    check(
        "formula f\n  percent of charge\nstage a\n  100 % water\n",
        "f: 100.00 % · water 100.0 %", "a: a · 100.00 %");
  }

  @Test
  void countsPieces() {
    // 37 · 42 g / 0.96 = 1618.75 g, as the order of a bar with 4 % loss asks by hand.
    check(
        """
        formula bar
          percent of charge
        stage a
          100 % white-sugar
        product bar-42
          centre 42 g bar
          make 37 pieces
          loss 4 % of centre
        """,
        "bar: 100.00 % · water 0.0 % · aw ≈ 0.00–0.05",
        "a: a · 100.00 %",
        "bar-42: 37 pieces × 42.0 g · needs 1618.75 g bar");
  }

  @Test
  void standsOverAVariantsOwnStagesOnly() {
    check(
        """
        formula f
          percent of charge
          batch 100 g
        stage a
          40 % white-sugar
        stage b
          60 % water
        variant v of f
          change 30 % white-sugar
        stage a again
          mix
        """,
        "f: 100.00 % · charge 100 g · water 100.0 %",
        "a: a · 40.00 % · 40.0 g",
        "b: b · 60.00 % · 60.0 g",
        "v: 90.00 % · charge 90 g · water 100.0 %",
        "a: a · 30.00 % · 30.0 g");
  }

  @Test
  void namesTheSubjectOfACommand() {
    FeatureFixture fixture = FeatureFixture.of("formula f\nstage a\n  10 g water\n");
    assertEquals(
        List.of(Optional.of("f"), Optional.empty()),
        Totals.of(fixture.snapshot(), fixture.document()).stream()
            .map(Total::subject)
            .toList());
  }

  private static void check(String text, String... expected) {
    assertEquals(String.join("\n", expected), String.join("\n", totals(text)));
  }

  private static List<String> totals(String text) {
    FeatureFixture fixture = FeatureFixture.of(text);
    return Totals.of(fixture.snapshot(), fixture.document()).stream()
        .map(total -> fixture.text(total.span()) + ": " + total.title())
        .toList();
  }
}
