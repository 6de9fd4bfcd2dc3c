package dev.kettlemark.cards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Today;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.GelatineExchange;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.answers.WhiteExchange;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.science.Bloom;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.LeafMarkdown;
import java.util.List;
import java.util.Locale;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnswerCardTest {

  private static final Snapshot SAMPLES = CardBench.samples();

  private static String card(Asked asked, String tag) {
    Leaf leaf = AnswerCard.of(asked, Locale.forLanguageTag(tag), Today.DAY).orElseThrow();
    assertEquals(Leaf.Size.HALF, leaf.size());
    return LeafMarkdown.of(leaf);
  }

  private static Material material(String name) {
    return new Shelf(SAMPLES).material(name).orElseThrow();
  }

  private static Asked white(String from, String to) {
    Answer answer = WhiteExchange.of(
            Mass.ofGrams(134), material(from), material(to), WhiteExchange.Equal.PROTEIN)
        .toOptional()
        .orElseThrow();
    return Asked.of("egg-white", answer, "134 g", from, to).replacing(material(from), material(to));
  }

  /** 134 g · 10.90 / 82.40 = 17.7 g; USDA SR26, foods 01124 and 01136. */
  @Test
  void tellsTheAnswerInOneLine() {
    String card = card(white("egg-white", "egg-white-powder"), "en-GB");
    assertTrue(card.contains("Use 17.7"), card);
    assertTrue(card.contains("Both state the same allergens"), card);
    assertTrue(card.contains("How much foam it makes"), card);
    assertTrue(card.contains("mass balance over the compositions"), card);
    assertTrue(card.contains("check against current local food law"), card);
  }

  @Test
  void warnsOfRawEgg() {
    String card = card(white("egg-white-powder", "egg-white"), "en-GB");
    assertTrue(card.contains("Contains egg that may stay raw"), card);
  }

  /** 12 g · √(250/200) = 13.4 g and 12 g · 250/200 = 15.0 g; GMIA Gelatin Handbook (2012), and by hand. */
  @ParameterizedTest
  @ValueSource(strings = {"en-GB", "de-DE", "fr-FR"})
  void tellsBothRulesForGelatine(String tag) {
    Answer answer = GelatineExchange.of(
        Mass.ofGrams(12), new Bloom(250), new Bloom(200), GelatineExchange.Rule.ROOT);
    String card = card(Asked.of("gelatine", answer, "12 g", "250", "200"), tag);
    String mark = tag.equals("en-GB") ? "." : ",";
    assertTrue(card.contains("13" + mark + "4\u202fg"), card);
    assertTrue(card.contains("15" + mark + "0\u202fg"), card);
  }

  private static Answer mould(String from, int count, String to) {
    return MouldAnswer.of(
            CardBench.side(SAMPLES, "heather-nougat").formula(), from, count, to, BigFraction.ZERO)
        .fold(known -> known, unknown -> {
          throw new AssertionError(unknown.because());
        });
  }

  /**
   * By hand: a slab of 360 × 340 × 16 mm holds 1958.4 mL, one of 300 × 200 × 15 mm 900 mL, so one fills
   * 2.176 of the other; at the 0.95 g/mL that the formula expects it weighs 1860.5 g.
   */
  @Test
  void takesOneFrameForAnother() {
    Answer answer = mould("frame-slab", 1, "frame-small");
    assertEquals(1958.4 / 900, answer.value("fillings").orElseThrow().figure(), 1e-6);
    assertEquals(1860.5, answer.value("finished-mass").orElseThrow().figure(), 0.2);
    double full = answer.value("charge-for-full").orElseThrow().figure();
    double now = answer.value("charge-now").orElseThrow().figure();
    assertEquals(3 * 900 / 1958.4, full / now, 0.001);
    assertTrue(answer.notes().get(0).contains("18 % full"), answer.notes().toString());
  }

  /** By hand: 24 cavities of 9.5 mL hold 228 mL, a slab 1958.4 mL: 8.589 moulds, 206 whole pieces. */
  @Test
  void countsThePiecesOfAMould() {
    Answer answer = mould("frame-slab", 1, "dome-24");
    assertEquals(206, answer.value("pieces-then").orElseThrow().figure());
    assertEquals(9.5 * 0.95, answer.value("piece-then").orElseThrow().figure(), 0.01);
  }

  @Test
  void doesNotKnowAMouldThatTheHouseHasNot() {
    List<String> told = MouldAnswer.of(
            CardBench.side(SAMPLES, "heather-nougat").formula(),
            "frame-slab",
            1,
            "moon-mould",
            BigFraction.ZERO)
        .fold(known -> List.of(), unknown -> List.of(unknown.because()));
    assertEquals(List.of("the house has no mould or frame `moon-mould`"), told);
  }
}
