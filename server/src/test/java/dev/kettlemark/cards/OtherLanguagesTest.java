package dev.kettlemark.cards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.EnglishLeaks;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Variant;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.LeafMarkdown;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Comparisons in German and French hold no sentence in English but what the source says. */
class OtherLanguagesTest {

  private static final Snapshot SAMPLES = CardBench.samples();

  private static final EnglishLeaks LEAKS = EnglishLeaks.besidesSources();

  private static List<Side> sides() {
    List<Side> sides = new ArrayList<>();
    SAMPLES.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .flatMap(entry -> entry.declaration().stream())
        .filter(declared -> declared instanceof Formula || declared instanceof Variant)
        .map(declared -> declared.name().value())
        .forEach(
            name -> Side.of(SAMPLES, name, Optional.empty(), Optional.empty()).ifKnown(sides::add));
    return sides;
  }

  private static String page(SideBySide both, String tag) {
    Leaf page = ComparisonPage.of(both, Locale.forLanguageTag(tag)).orElseThrow();
    return LeafMarkdown.of(page);
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "fr-FR"})
  void noPairOfSamplesIsComparedInEnglish(String tag) {
    List<Side> sides = sides();
    assertTrue(sides.size() >= 10, "only " + sides.size());
    Set<String> leaks = new TreeSet<>();
    for (Side first : sides) {
      for (Side second : sides) {
        SideBySide both = SideBySide.of(first, second);
        LEAKS.in(page(both, "en-GB"), page(both, tag)).forEach(leaks::add);
      }
    }
    assertEquals(Set.of(), leaks);
  }

  /** The test finds what it looks for. */
  @Test
  void seesASentenceInEnglish() {
    String english = "Foam: unknown: nobody has said how much of it is protein";
    assertFalse(LEAKS.in(english, "Schaum: unbekannt: nobody has said how much").isEmpty());
    assertTrue(LEAKS.in(english, "Schaum: unbekannt: niemand hat es gesagt").isEmpty());
  }
}
