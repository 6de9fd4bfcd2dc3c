package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.features.InlayHints.Hint;
import dev.kettlemark.features.InlayHints.Kind;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Hints are drawn into the text in square brackets; figures are checked against hand calculation. */
class InlayHintsTest {

  private static final String FORMULA = """
      formula f
        percent of charge
        batch 1200 g
        basis liquid = water
      stage a
        36.00 % white-sugar[432.0 g]
        q.s. water[63.75 % · 764.9 g] at 60 °C[140 °F]
        0.40 % of liquid white-sugar[0.25 % · 3.06 g]
        cook to 118 °C ± 1[244 °F ± 1.8]
        at 20-24 °C[68–75 °F] keep
        mix to 250 °F[121.1 °C]
      """;

  @Test
  void standsBesideSharesAndTemperatures() {
    // By hand: the liquid w and 0.40 % of it fill 64 %: w = 64 / 1.004 = 63.745 %.
    check(FORMULA);
  }

  @Test
  void tellsTheShareOfWeights() {
    // By hand: 70 mL of water at 0.998 g/mL weigh 69.86 g; 30 / 99.86 = 30.04 %.
    check("""
        formula f
        stage a
          30 g white-sugar[30.04 %]
          70 mL water[69.96 % · 69.9 g]
        """);
  }

  @Test
  void leavesGramsOutWithoutABatch() {
    check("""
        formula f
          percent of charge
        stage a
          30 % white-sugar
          q.s. water[70.00 %]
        """);
  }

  @Test
  void staysOffWhatAVariantInherits() {
    check("""
        formula f
          percent of charge
          batch 100 g
        stage a
          10 % white-sugar[10.0 g]
          q.s. water[90.00 % · 90.0 g]
        variant v of f
          change 20 % white-sugar[20.0 g]
        """);
  }

  @Test
  void weighsThePartsOfAPiece() {
    // By hand: 18 / 0.76 = 23.684 g; 24 % of that is 5.684 g.
    check("""
        product p
          centre 18 g water[76.00 %]
          coat 24 % of finished white-sugar[5.68 g]
        """);
  }

  @Test
  void keepsToTheRangeAndTheKindsAskedFor() {
    FeatureFixture fixture = FeatureFixture.of(undrawn(FORMULA));
    String text = fixture.document().text().source().text();
    int sugar = text.indexOf("36.00");
    List<Hint> hints = InlayHints.of(
        fixture.snapshot(),
        fixture.document(),
        new Span(sugar, sugar + 20),
        EnumSet.allOf(Kind.class));
    assertEquals(List.of("432.0 g"), hints.stream().map(Hint::label).toList());
    List<Hint> scales = InlayHints.of(
        fixture.snapshot(),
        fixture.document(),
        new Span(0, text.length()),
        Set.of(Kind.OTHER_SCALE));
    assertEquals(
        List.of("140 °F", "244 °F ± 1.8", "68–75 °F", "121.1 °C"),
        scales.stream().map(Hint::label).toList());
  }

  private static void check(String drawn) {
    FeatureFixture fixture = FeatureFixture.of(undrawn(drawn));
    String text = fixture.document().text().source().text();
    List<TextEdit> labels = InlayHints.of(
            fixture.snapshot(),
            fixture.document(),
            new Span(0, text.length()),
            EnumSet.allOf(Kind.class))
        .stream()
        .map(hint -> TextEdit.insert(hint.offset(), "[" + hint.label() + "]"))
        .toList();
    assertEquals(drawn, TextEdit.applyAll(text, labels));
  }

  private static String undrawn(String drawn) {
    return drawn.replaceAll("\\[[^]]*]", "");
  }
}
