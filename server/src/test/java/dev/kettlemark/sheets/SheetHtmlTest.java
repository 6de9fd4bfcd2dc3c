package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import dev.kettlemark.Pinned;
import dev.kettlemark.library.Snapshot;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
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
        "creditText",
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

  /** Pictures by reader: the chef sees flow and heat, the line flow and shares, the bench none. */
  @ParameterizedTest
  @CsvSource({
    "CHEF, en-GB, flow time",
    "HOME, en-GB, time",
    "HOME, en-US, ''",
    "PRODUCTION, en-GB, flow shares",
    "BENCH, en-GB, ''"
  })
  void showsTheReadersPictures(SheetReader reader, String tag, String kinds) {
    Document page = parse(
        SheetHtml.of(SheetBench.sheet(SAMPLES, SheetBench.request("heather-nougat", reader, tag))));
    List<String> shown = new ArrayList<>();
    NodeList figures = page.getElementsByTagName("figure");
    for (int i = 0; i < figures.getLength(); i++) {
      Element figure = (Element) figures.item(i);
      String kind = figure.getAttribute("class").replace("picture ", "");
      boolean isGoingOn = shown.contains(kind);
      if (!isGoingOn) {
        shown.add(kind);
      }
      Element svg = (Element) figure.getElementsByTagName("svg").item(0);
      assertEquals("img", svg.getAttribute("role"));
      for (String name : svg.getAttribute("aria-labelledby").split(" ")) {
        assertTrue(ids(page).contains(name), name);
      }
      String said = svg.getElementsByTagName("desc").item(0).getTextContent();
      assertTrue(isGoingOn ? !said.isBlank() : said.contains("foam"), "it is also said");
    }
    assertEquals(kinds, String.join(" ", shown));
  }

  /** HTML allows each id once: HTML Living Standard, section 3.2.6, from memory. */
  @ParameterizedTest
  @EnumSource(SheetReader.class)
  void noIdStandsTwiceOnAPage(SheetReader reader) {
    for (String name : List.of("heather-nougat", "caramel-dome", "orchard-bar-42")) {
      List<String> ids = ids(parse(
          SheetHtml.of(SheetBench.sheet(SAMPLES, SheetBench.request(name, reader, "en-GB")))));
      assertEquals(ids.size(), new HashSet<>(ids).size(), ids.toString());
    }
  }

  /** A picture shows the very batch of its sheet: 12 domes, and no more couverture than they need. */
  @Test
  void drawsTheBatchOfTheSheet() {
    String page = SheetHtml.of(SheetBench.sheet(
        SAMPLES,
        SheetBench.request("caramel-dome", SheetReader.CHEF, "en-GB")
            .making(SheetBench.pieces(12))));
    assertTrue(page.contains(">12 pieces</text>"));
    assertTrue(page.contains(">centre, 12.0 g a piece</text>"));
  }

  private static List<String> ids(Document page) {
    NodeList all = page.getElementsByTagName("*");
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      Element one = (Element) all.item(i);
      if (one.hasAttribute("id")) {
        ids.add(one.getAttribute("id"));
      }
    }
    return ids;
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
