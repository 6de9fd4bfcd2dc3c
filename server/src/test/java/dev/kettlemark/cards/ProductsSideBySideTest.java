package dev.kettlemark.cards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.EnglishLeaks;
import dev.kettlemark.Pinned;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.sheets.LeafHtml;
import dev.kettlemark.sheets.LeafMarkdown;
import dev.kettlemark.sheets.Pair;
import dev.kettlemark.sheets.SheetFigure;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProductsSideBySideTest {

  private static final Snapshot SAMPLES = CardBench.samples();

  private static final ProductsSideBySide BOTH = both(SAMPLES, "orchard-bar-42", "caramel-dome");

  /** Sugar and cocoa butter need no model: what is in a piece can be counted by hand. */
  private static final String BY_HAND = """
      house test
        currency EUR

      ingredient sweet
        contains  100 % sucrose
        price     1.00 per kg

      ingredient hard-fat
        contains  100 % fat
        saturates 60 %
        price     10.00 per kg

      product bare "Bare"
        make   10 pieces
        centre 20 g sweet

      product dipped "Dipped"
        make   10 pieces
        centre 20 g sweet
        coat   20 % of finished hard-fat
      """;

  private static ProductSide side(Snapshot snapshot, String name) {
    return ProductSide.of(snapshot, name, Optional.empty()).fold(known -> known, unknown -> {
      throw new AssertionError(unknown.because());
    });
  }

  private static ProductsSideBySide both(Snapshot snapshot, String first, String second) {
    return ProductsSideBySide.of(side(snapshot, first), side(snapshot, second));
  }

  private static double best(SheetFigure figure) {
    return figure.reach().map(SheetFigure.Reach::best).orElse(Double.NaN);
  }

  private static double second(ProductsSideBySide both, String word) {
    return best(both.figure(word).orElseThrow().second());
  }

  /**
   * By hand: 20 g are 80 % of 25 g, so the coat is 5 g, of which 3 g are saturates. Regulation (EU) No
   * 1169/2011, annex XIV: 20·17 + 5·37 = 525 kJ. 20 g at 1 and 5 g at 10 a kilogram are 0.07.
   */
  @Test
  void countsThePiece() {
    ProductsSideBySide both = both(CardBench.of(BY_HAND), "bare", "dipped");
    assertEquals(10, second(both, "pieces"), 1e-9);
    assertEquals(25, second(both, "piece-weight"), 1e-6);
    assertEquals(20, second(both, "coat-share"), 1e-6);
    assertEquals(5, second(both, "nutrition.fat"), 1e-6);
    assertEquals(3, second(both, "nutrition.saturates"), 1e-6);
    assertEquals(525, second(both, "nutrition.kj"), 1e-6);
    assertEquals(0.07, second(both, "cost-piece"), 1e-9);
    assertEquals(20, best(both.figure("piece-weight").orElseThrow().first()), 1e-9);
    assertEquals(0, best(both.figure("coat-share").orElseThrow().first()), 1e-9);
  }

  @Test
  void pairsThePartsOfOneDuty() {
    assertEquals("centre", BOTH.parts().get(0).role());
    assertTrue(BOTH.parts().get(0).isPaired());
    assertEquals("coat", BOTH.parts().get(1).role());
    assertEquals(Optional.empty(), BOTH.parts().get(1).first());
  }

  @Test
  void findsNoDifferenceOfAProductFromItself() {
    ProductsSideBySide same = both(SAMPLES, "caramel-dome", "caramel-dome");
    same.figures().stream()
        .filter(Pair::isKnown)
        .forEach(pair -> assertTrue(pair.difference().isNone(), pair.word()));
    assertTrue(same.words().stream().allMatch(LabelWord::isSame));
  }

  @Test
  void isNoProductWhatIsAFormula() {
    assertFalse(ProductSide.of(SAMPLES, "heather-nougat", Optional.empty()).isKnown());
  }

  private static String page(String tag) {
    return LeafMarkdown.of(ProductsPage.of(BOTH, Locale.forLanguageTag(tag)).orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-GB", "de-DE", "fr-FR"})
  void pinsThePage(String tag) {
    Pinned.resource("cards/orchard-bar-42-and-caramel-dome." + tag + ".md")
        .check(page(tag), ProductsSideBySideTest.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "fr-FR"})
  void speaksNoEnglishElsewhere(String tag) {
    assertEquals(Set.of(), EnglishLeaks.besidesSources().in(page("en-GB"), page(tag)));
    assertTrue(LeafHtml.of(ProductsPage.of(BOTH, Locale.forLanguageTag(tag)).orElseThrow())
        .startsWith("<!DOCTYPE html>"));
  }
}
