package dev.kettlemark.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Pinned;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;

class PicturesTest {

  private static final String UNKNOWN = """
      formula riddle "Riddle & <co>"
        percent of charge

      stage mash in "the bowl"
        40 % moonstone-dust
        x % water
        warm to 60 °C
        cook to 300 °C

      stage last
        half of nowhere
        all of mash
        mix
      """;

  /** A pinned file was drawn by another run of the machine, so it also holds that runs do not differ. */
  @ParameterizedTest
  @ValueSource(strings = {"heather-nougat", "chewy-caramel", "italian-meringue"})
  void samplesAreDrawnAsTheyWere(String formula) {
    for (PictureKind kind : PictureKind.values()) {
      Pinned.resource("pictures/" + formula + "-" + kind.word() + ".svg")
          .check(Drawn.picture(Drawn.samples(), formula, kind).svg(), PicturesTest.class);
    }
  }

  @ParameterizedTest
  @EnumSource
  void everySampleIsDrawnWholeAndTheSameEachTime(PictureKind kind) {
    Snapshot samples = Drawn.samples();
    Snapshot again = Drawn.samples();
    List<Entry> formulas = Drawn.formulas(samples);
    assertTrue(formulas.size() >= 10, () -> "only " + formulas.size() + " formulas");
    Set<String> ids = new HashSet<>();
    for (Entry entry : formulas) {
      Picture picture = Pictures.of(samples, entry, kind).orElseThrow();
      holds(picture);
      assertEquals(picture, Pictures.of(again, entry, kind).orElseThrow());
      assertTrue(ids.add(Drawn.root(picture).getAttribute("id")), picture.title());
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyMistakeIsDrawnAsFarAsItIsKnown(PictureKind kind) {
    for (Snapshot alone : Drawn.gallery()) {
      for (Entry entry : Drawn.formulas(alone)) {
        holds(Pictures.of(alone, entry, kind).orElseThrow());
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void whatIsUnknownIsDrawnAsUnknown(PictureKind kind) {
    Picture picture = Drawn.picture(Drawn.text(UNKNOWN), "riddle", kind);
    holds(picture);
    assertTrue(picture.title().contains("Riddle & <co>"), picture.title());
    boolean says = picture.words().contains("unknown") || picture.words().contains("not said");
    assertTrue(says, picture.words());
  }

  @Test
  void otherSectionsHaveNoPicture() {
    Snapshot samples = Drawn.samples();
    assertTrue(Pictures.of(samples, Drawn.entry(samples, "white-sugar"), PictureKind.FLOW)
        .isEmpty());
  }

  /** Bars of a stage fill the hundred percent, but for what is too little to be told. */
  @Test
  void sharesFillTheBar() {
    Element root = Drawn.root(Drawn.picture(Drawn.samples(), "heather-nougat", PictureKind.SHARES));
    for (Element stage : Drawn.groups(root, "stage")) {
      double all = Drawn.named(stage, "rect").stream()
          .mapToDouble(bar -> Drawn.number(bar, "width"))
          .sum();
      assertEquals(640, all, 640 * 0.005);
    }
  }

  @Test
  void patternsThatAreUsedAreThere() {
    Element root = Drawn.root(Drawn.picture(Drawn.samples(), "heather-nougat", PictureKind.SHARES));
    Set<String> patterns = new HashSet<>();
    Drawn.named(root, "pattern").forEach(pattern -> patterns.add(pattern.getAttribute("id")));
    for (Element bar : Drawn.named(root, "rect")) {
      String fill = bar.getAttribute("fill");
      if (fill.startsWith("url(")) {
        String id = fill.substring("url(#".length(), fill.length() - 1);
        assertTrue(patterns.contains(id), id);
      }
    }
  }

  /** What every picture must be: well-formed, within its frame, with ids of its own and no script. */
  private static void holds(Picture picture) {
    Element root = Drawn.root(picture);
    String[] frame = root.getAttribute("viewBox").split(" ", -1);
    double width = Double.parseDouble(frame[2]);
    double height = Double.parseDouble(frame[3]);
    Set<String> ids = new HashSet<>();
    for (Element each : all(root)) {
      assertFalse(each.getTagName().equals("script"), picture.svg());
      Attr id = each.getAttributeNode("id");
      if (id != null) {
        assertTrue(id.getValue().startsWith(root.getAttribute("id")), id.getValue());
        assertTrue(ids.add(id.getValue()), () -> "twice: " + id.getValue());
      }
    }
    for (Element text : Drawn.named(root, "text")) {
      boolean ends = text.getAttribute("text-anchor").equals("end");
      double size = text.getAttribute("class").equals("head") ? TextWidth.HEAD : TextWidth.PLAIN;
      double wide = text.getAttribute("class").equals("small")
          ? TextWidth.of(text.getTextContent(), TextWidth.SMALL)
          : TextWidth.of(text.getTextContent(), size);
      double x = Drawn.number(text, "x");
      double y = Drawn.number(text, "y");
      assertTrue((ends ? x - wide : x) >= 0, text.getTextContent());
      assertTrue((ends ? x : x + wide) <= width, () -> text.getTextContent() + " of " + width);
      assertTrue(y >= 0 && y <= height, text.getTextContent());
    }
  }

  private static List<Element> all(Element root) {
    return Stream.concat(Stream.of(root), Drawn.named(root, "*").stream()).toList();
  }
}
