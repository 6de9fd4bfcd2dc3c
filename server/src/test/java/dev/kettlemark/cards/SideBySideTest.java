package dev.kettlemark.cards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Pinned;
import dev.kettlemark.cards.Judgement.Status;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.Difference;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.LeafHtml;
import dev.kettlemark.sheets.LeafMarkdown;
import dev.kettlemark.sheets.Pair;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SideBySideTest {

  private static final Snapshot SAMPLES = CardBench.samples();

  private static final List<String> ALL = List.of(
      "heather-nougat",
      "heather-nougat-plant",
      "egg-honey-nougat",
      "gelatine-marshmallow",
      "italian-meringue",
      "chewy-caramel",
      "peanut-brittle",
      "raspberry-jelly",
      "white-fondant",
      "orchard-bar",
      "pressed-nut-bar");

  private static final SideBySide PLANT =
      CardBench.both(SAMPLES, "heather-nougat", "heather-nougat-plant");

  private static double best(SheetFigure figure) {
    return figure.reach().map(SheetFigure.Reach::best).orElse(Double.NaN);
  }

  @Test
  void findsNoDifferenceOfAFormulaFromItself() {
    for (String name : ALL) {
      SideBySide both = CardBench.both(SAMPLES, name, name);
      both.amounts()
          .forEach(exchange -> assertTrue(
              Told.doses(both, exchange).difference().isNone() && !exchange.isAnother(), name));
      both.figures().stream()
          .filter(Pair::isKnown)
          .forEach(pair -> assertEquals(
              Difference.Kind.NONE, pair.difference().kind(), name + " " + pair.word()));
      assertTrue(both.words().stream().allMatch(LabelWord::isSame), name);
      assertTrue(both.judgements().stream().noneMatch(j -> j.status() == Status.MOVES), name);
    }
  }

  @Test
  void isTheSameFromTheOtherSide() {
    for (String one : ALL) {
      for (String other : ALL.subList(0, 4)) {
        SideBySide both = CardBench.both(SAMPLES, one, other);
        SideBySide back = CardBench.both(SAMPLES, other, one);
        assertEquals(
            both.words().stream().map(LabelWord::mirrored).toList(), back.words(), one + other);
        assertEquals(statuses(both), statuses(back), one + " and " + other);
        for (Pair pair : both.figures()) {
          // The batch is that of the first, so weights are others, and what they cost.
          if (pair.first().unit() == SheetUnit.GRAM || pair.first().unit() == SheetUnit.PRICE) {
            continue;
          }
          Difference there = back.figure(pair.word()).orElseThrow().difference();
          assertEquals(pair.difference().kind(), there.mirrored().kind(), pair.word());
          assertEquals(pair.difference().by(), there.mirrored().by(), 0.2, pair.word());
        }
      }
    }
  }

  private static Set<String> statuses(SideBySide both) {
    Set<String> statuses = new HashSet<>();
    both.judgements().forEach(j -> statuses.add(j.duty() + " " + j.status()));
    return statuses;
  }

  /**
   * By hand: 1.05 % of egg white powder with 82.40 % protein is 0.865 %; USDA SR26, food 01136. As fresh
   * white by the pantry's 12 % (egg board sheet): 1.05 / 0.12 = 8.75 %.
   */
  @Test
  void countsWhatWhips() {
    assertEquals(0.865, best(PLANT.figure("whipping-protein").orElseThrow().first()), 0.002);
    assertEquals(8.75, best(PLANT.figure("as-egg-white").orElseThrow().first()), 0.005);
    SheetFigure plant = PLANT.figure("as-egg-white").orElseThrow().second();
    assertTrue(plant.reach() instanceof Outcome.Unknown<?>, "no ratio is stated for it");
  }

  /** Who stands for whom is what the variant itself writes. */
  @Test
  void pairsWhatStandsForWhat() {
    assertEquals("potato-whip-protein", standsFor("egg-white-powder"));
    assertEquals("agave-syrup", standsFor("heather-honey"));
    Exchange xanthan = PLANT.amounts().get(PLANT.amounts().size() - 1);
    assertEquals(Optional.empty(), xanthan.first());
    assertEquals("xanthan-gum", xanthan.second().orElseThrow().material());
    assertEquals(Optional.of(Function.THICKENING), xanthan.function());
  }

  private static String standsFor(String material) {
    return PLANT.amounts().stream()
        .filter(exchange ->
            exchange.first().filter(a -> a.material().equals(material)).isPresent())
        .flatMap(exchange -> exchange.second().stream())
        .map(Exchange.Amount::material)
        .findFirst()
        .orElse("");
  }

  /** What everybody knows of the two: the egg goes, the honey's caution goes, vegan comes. */
  @Test
  void tellsWhatMovesOnTheLabel() {
    assertTrue(PLANT
        .words()
        .contains(
            new LabelWord(LabelWord.Kind.ALLERGEN, "egg", "allergy.contains", "allergy.site")));
    assertTrue(PLANT
        .words()
        .contains(
            new LabelWord(LabelWord.Kind.CLAIM, "vegan", "standing.broken", "standing.holds")));
    assertTrue(PLANT
        .words()
        .contains(new LabelWord(
            LabelWord.Kind.CAUTION, "honey-infant", "warning.stated", "warning.none")));
    assertEquals(Status.MOVES, status("allergens"));
    assertEquals(Status.UNKNOWN, status("foam"));
    assertEquals(Status.UNKNOWN, status("proof"));
    assertEquals(Status.KEPT, status("bite"));
  }

  private static Status status(String duty) {
    return PLANT.judgements().stream()
        .filter(judgement -> judgement.duty().equals(duty))
        .findFirst()
        .orElseThrow()
        .status();
  }

  /** Gelatine by the square-root rule (GMIA Gelatin Handbook, 2012): 1 g of 160 bloom is 0.894 g of 200. */
  @Test
  void countsGelatineInOneStrength() {
    Snapshot snapshot = CardBench.of("""
        formula weak "Weak"
          percent   of charge
          batch     1000 g

        stage pan
           8.00 %             gelatine-160
          92.00 %             water
          stand     for 10 min until bloomed

        variant strong "Strong" of weak
          replace   gelatine-160  by 7.16 % gelatine-200
        """);
    SideBySide both = CardBench.both(snapshot, "weak", "strong");
    Pair gel = both.figure("as-gelatine").orElseThrow();
    assertEquals(8 * Math.sqrt(160.0 / 200), best(gel.first()), 0.04);
    assertEquals(7.16, best(gel.second()), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-GB", "de-DE", "fr-FR"})
  void pinsThePageOfAVariant(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    Pinned.resource("cards/heather-nougat-plant." + tag + ".md")
        .check(
            LeafMarkdown.of(ComparisonPage.of(PLANT, locale).orElseThrow()), SideBySideTest.class);
  }

  @Test
  void pinsThePageForABrowser() {
    Pinned.resource("cards/heather-nougat-plant.html")
        .check(
            LeafHtml.of(ComparisonPage.of(PLANT, Locale.UK).orElseThrow()), SideBySideTest.class);
  }

  private static List<String> keys(SideBySide both) {
    return both.judgements().stream()
        .flatMap(judgement ->
            Stream.of("duty." + judgement.duty(), judgement.status().key()))
        .toList();
  }

  @Test
  void hasWordsForEveryJudgement() {
    for (String tag : List.of("en-GB", "de-DE", "fr-FR")) {
      for (int i = 1; i < ALL.size(); i++) {
        SideBySide both = CardBench.both(SAMPLES, ALL.get(i - 1), ALL.get(i));
        Leaf page = ComparisonPage.of(both, Locale.forLanguageTag(tag)).orElseThrow();
        for (String key : keys(both)) {
          assertTrue(LeafMarkdown.of(page).contains(page.text(Phrase.words(key))), key);
          assertFalse(page.text(Phrase.words(key)).equals(key), key);
        }
      }
    }
  }
}
