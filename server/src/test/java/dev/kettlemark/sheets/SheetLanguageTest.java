package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.library.Snapshot;
import org.junit.jupiter.api.Test;

/** Names and notes in the language of the sheet, and which language they are in where there are none. */
class SheetLanguageTest {

  private static final Snapshot SNAPSHOT = SheetBench.of("""
      house quay "Quay"
        altitude  0 m

      ingredient harbour-paste "Harbour paste, dark"
        form      paste
        contains  20.00 % water, 80.00 % sucrose
        names     in de "Hafenpaste, dunkel" in fr "Pâte du port, foncée"

      ingredient quiet-paste "Quiet paste"
        form      paste
        contains  20.00 % water, 80.00 % sucrose

      formula quay-paste "Quay paste"
        percent   of charge
        batch     1000 g
        names     in de "Kaipaste"
        note      "Serve cold."
        note      in de "Kalt servieren."

      stage pan "Warm mix"
        50.00 %   harbour-paste
        40.00 %   quiet-paste
        10.00 %   water
        names     in de "Warme Masse"
        mix       harbour-paste, quiet-paste, water

      variant quay-paste-thin "Thin quay paste" of quay-paste
        change    12.00 % water in pan
        change    48.00 % harbour-paste in pan
      """);

  private static String page(String name, String tag) {
    return SheetHtml.of(
        SheetBench.sheet(SNAPSHOT, SheetBench.request(name, SheetReader.CHEF, tag)));
  }

  @Test
  void usesTheNamesOfTheLanguage() {
    String german = page("quay-paste", "de-DE");
    assertTrue(german.contains("<h1>Kaipaste</h1>"));
    assertTrue(german.contains("Hafenpaste, dunkel"));
    assertTrue(german.contains("Warme Masse"));
    assertTrue(german.contains("Kalt servieren."));
    assertFalse(german.contains("Serve cold."));
    assertTrue(page("quay-paste", "fr-FR").contains("Pâte du port, foncée"));
  }

  /** WCAG 2.2, success criterion 3.1.2: what is in another language says so. */
  @Test
  void marksWhatIsInAnotherLanguage() {
    assertTrue(page("quay-paste", "de-DE").contains("<span lang=\"en\">Quiet paste</span>"));
    String french = page("quay-paste", "fr-FR");
    assertTrue(french.contains("<h1 lang=\"en\">Quay paste</h1>"));
    assertTrue(french.contains("<span lang=\"en\">Serve cold.</span>"));
    assertFalse(page("quay-paste", "en-GB").contains("<span lang="));
  }

  /** A variant is not what it comes from, so it does not bear its name. */
  @Test
  void aVariantHasNamesOfItsOwn() {
    assertTrue(page("quay-paste-thin", "de-DE").contains("<h1 lang=\"en\">Thin quay paste</h1>"));
  }

  @Test
  void aHouseMayWriteInAnotherLanguage() {
    Snapshot german = SheetBench.of("""
        house kai "Kai"
          altitude  0 m
          language  de

        formula paste "Kaipaste"
          percent   of charge
          batch     1000 g

        stage topf "Topf"
          90.00 %   white-sugar
          10.00 %   water
          mix       white-sugar, water
        """);
    String page = SheetHtml.of(
        SheetBench.sheet(german, SheetBench.request("paste", SheetReader.CHEF, "de-DE")));
    assertTrue(page.contains("<h1>Kaipaste</h1>"));
    assertEquals(-1, page.indexOf("<span lang="));
  }
}
