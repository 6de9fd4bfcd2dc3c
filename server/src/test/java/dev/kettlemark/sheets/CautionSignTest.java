package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** A drawing helps the eye; what is said stands in words. */
class CautionSignTest {

  private static final Snapshot SAMPLES = SheetBench.samples();

  private static List<Element> points(SheetReader reader) {
    String page = SheetHtml.of(
        SheetBench.sheet(SAMPLES, SheetBench.request("heather-nougat", reader, "en-GB")));
    NodeList sections = SheetHtmlTest.parse(page).getElementsByTagName("section");
    List<Element> points = new ArrayList<>();
    for (int i = 0; i < sections.getLength(); i++) {
      Element section = (Element) sections.item(i);
      if (section.getAttribute("id").equals("cautions")) {
        NodeList items = section.getElementsByTagName("li");
        for (int j = 0; j < items.getLength(); j++) {
          points.add((Element) items.item(j));
        }
      }
    }
    return points;
  }

  @Test
  void everyCautionOfTheLanguageHasOne() {
    List<String> missing = Vocabulary.of("caution").stream()
        .map(term -> term.word())
        .filter(word -> CautionSign.of(word).isEmpty())
        .toList();
    assertEquals(List.of(), missing);
    assertTrue(CautionSign.of("no-such-caution").isEmpty());
  }

  /** Readers by ear are told the text alone: WAI-ARIA 1.2, aria-hidden, from memory. */
  @ParameterizedTest
  @CsvSource({"CHEF, true, true", "HOME, true, false", "PRODUCTION, false, false"})
  void standsBesideTheText(SheetReader reader, boolean isDrawn, boolean isFirst) {
    List<Element> points = points(reader);
    assertTrue(points.size() >= 3);
    for (Element point : points) {
      assertTrue(point.getTextContent().strip().length() > 10);
      NodeList drawings = point.getElementsByTagName("svg");
      assertEquals(isDrawn ? 1 : 0, drawings.getLength());
      if (isDrawn) {
        assertEquals("true", ((Element) drawings.item(0)).getAttribute("aria-hidden"));
        assertFalse(((Element) drawings.item(0)).hasAttribute("role"));
        Node first = point.getFirstChild();
        boolean isSign =
            first instanceof Element element && element.getAttribute("class").equals("sign");
        assertEquals(isFirst, isSign);
      }
    }
  }

  /** The same words with and without drawings. */
  @Test
  void changesNoWord() {
    List<String> chef = points(SheetReader.CHEF).stream()
        .map(point -> point.getTextContent().strip())
        .toList();
    List<String> home = points(SheetReader.HOME).stream()
        .map(point -> point.getTextContent().strip())
        .toList();
    assertEquals(chef, home);
    assertTrue(points(SheetReader.PRODUCTION).stream()
        .map(point -> point.getTextContent().strip())
        .toList()
        .containsAll(chef));
  }

  /** In forced colours a page may count on system colours alone: CSS Color Adjustment Level 1, section 3. */
  @Test
  void staysVisibleInForcedColours() {
    String style = SheetHtml.wholeStyle();
    String forced = style.substring(style.indexOf("@media (forced-colors: active)"));
    assertTrue(forced.contains(".sign svg") && forced.contains("figure.picture svg"));
    assertTrue(forced.contains(".blank"));
    Vocabulary.of("caution").forEach(term -> {
      String drawn = CautionSign.of(term.word()).orElseThrow().markup();
      assertFalse(drawn.contains("#"), "a colour of its own: " + drawn);
    });
  }
}
