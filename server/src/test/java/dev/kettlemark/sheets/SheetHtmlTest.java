package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import dev.kettlemark.Pinned;
import dev.kettlemark.library.Snapshot;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SheetHtmlTest {

  private static final Snapshot SAMPLES = SheetBench.samples();

  @ParameterizedTest
  @CsvSource({
    "heather-bench, en-GB",
    "dome-home, en-US",
    "orchard-line, en-GB",
    "heather-bench, de-DE",
    "heather-bench, fr-FR"
  })
  void pinsASheetOfTheSamples(String name, String tag) {
    SheetRequest request = SheetBench.declared(SAMPLES, name).in(Locale.forLanguageTag(tag));
    Pinned.resource("sheets/" + name + "." + tag + ".html")
        .check(SheetHtml.of(SheetBench.sheet(SAMPLES, request)), SheetHtmlTest.class);
  }

  /** The properties of schema.org's Recipe, HowToSection, HowToStep and Organization; from memory. */
  @ParameterizedTest
  @CsvSource({"heather-bench", "dome-home", "orchard-line"})
  void itsDataUsesTheWordsOfTheOpenVocabulary(String name) {
    JsonObject recipe =
        RecipeData.json(SheetBench.sheet(SAMPLES, SheetBench.declared(SAMPLES, name)));
    Set<String> known = Set.of(
        "@context",
        "@type",
        "name",
        "inLanguage",
        "identifier",
        "version",
        "datePublished",
        "author",
        "description",
        "recipeYield",
        "recipeCategory",
        "recipeIngredient",
        "tool",
        "recipeInstructions");
    assertTrue(known.containsAll(recipe.keySet()), recipe.keySet().toString());
    assertEquals("Recipe", recipe.get("@type").getAsString());
    assertTrue(recipe.getAsJsonArray("recipeIngredient").size() >= 5);
    recipe.getAsJsonArray("recipeInstructions").forEach(section -> {
      assertEquals(
          Set.of("@type", "name", "itemListElement"), section.getAsJsonObject().keySet());
      assertTrue(section.getAsJsonObject().getAsJsonArray("itemListElement").size() > 0);
    });
  }

  @ParameterizedTest
  @CsvSource({"heather-bench", "dome-home", "orchard-line"})
  void isWellFormedAndSafeToRead(String name) {
    String page = SheetHtml.of(SheetBench.sheet(SAMPLES, SheetBench.declared(SAMPLES, name)));
    Document parsed = parse(page);
    NodeList scripts = parsed.getElementsByTagName("script");
    assertEquals(1, scripts.getLength());
    assertEquals("application/ld+json", ((Element) scripts.item(0)).getAttribute("type"));
    NodeList tables = parsed.getElementsByTagName("table");
    assertTrue(tables.getLength() > 0);
    for (int i = 0; i < tables.getLength(); i++) {
      Element table = (Element) tables.item(i);
      assertEquals(1, table.getElementsByTagName("caption").getLength());
      NodeList heads = table.getElementsByTagName("th");
      for (int j = 0; j < heads.getLength(); j++) {
        assertTrue(((Element) heads.item(j)).hasAttribute("scope"));
      }
    }
  }

  @Test
  void isTheSameEachTime() {
    SheetRequest request = SheetBench.declared(SAMPLES, "heather-bench");
    assertEquals(
        SheetHtml.of(SheetBench.sheet(SAMPLES, request)),
        SheetHtml.of(SheetBench.sheet(SheetBench.samples(), request)));
  }

  /** No text of a source can become markup, in the page or in its data. */
  @Test
  void escapesWhatTheSourceSays() {
    Snapshot snapshot = SheetBench.of("""
        formula syrup "<b>Plain</b> & </script><script>alert(1)</script>"
          percent   of charge
          batch     1000 g
          note      "<img src=x onerror='x'>"

        stage pan
          60.00 %             white-sugar
          40.00 %             water
          boil      under lid until dissolved
        """);
    String page = SheetHtml.of(
        SheetBench.sheet(snapshot, SheetBench.request("syrup", SheetReader.CHEF, "en-GB")));
    Document parsed = assertDoesNotThrow(() -> parse(page));
    assertEquals(1, parsed.getElementsByTagName("script").getLength());
    for (String name : List.of("b", "img")) {
      assertEquals(0, parsed.getElementsByTagName(name).getLength());
    }
    assertTrue(parsed.getElementsByTagName("h1").item(0).getTextContent().startsWith("<b>Plain"));
  }

  static Document parse(String page) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    } catch (Exception broken) {
      throw new AssertionError(broken);
    }
  }
}
