package dev.kettlemark.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Formulas to draw, and drawn pictures as a tree. */
final class Drawn {

  private Drawn() {}

  static Snapshot samples() {
    return Snapshot.of(Library.of(SampleTexts.libraryWithPantry()));
  }

  /** Each text of the gallery as a library of its own. */
  static List<Snapshot> gallery() {
    return SampleTexts.mistakes().stream().map(Drawn::alone).toList();
  }

  static Snapshot text(String text) {
    return alone(Document.of("test.kettle", text));
  }

  private static Snapshot alone(Document document) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(document);
    return Snapshot.of(Library.of(all));
  }

  /** Formulas and variants of a library, the pantry's own left out. */
  static List<Entry> formulas(Snapshot snapshot) {
    return snapshot.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .filter(entry -> Formulas.computed(snapshot, entry).isPresent())
        .toList();
  }

  static Entry entry(Snapshot snapshot, String name) {
    return snapshot.library().find(Kind.MATERIAL, name).orElseThrow();
  }

  static ComputedFormula computed(Snapshot snapshot, String name) {
    return Formulas.computed(snapshot, entry(snapshot, name)).orElseThrow();
  }

  static Picture picture(Snapshot snapshot, String name, PictureKind kind) {
    return Pictures.of(snapshot, entry(snapshot, name), kind).orElseThrow();
  }

  /** The root of a picture; fails where it is not well-formed or not told in words. */
  static Element root(Picture picture) {
    Element root = parsed(picture.svg());
    assertEquals("svg", root.getTagName());
    assertEquals("img", root.getAttribute("role"));
    assertTrue(root.getAttribute("viewBox").startsWith("0 0 "), picture.svg());
    assertEquals(picture.title(), named(root, "title").get(0).getTextContent());
    assertEquals(picture.words(), named(root, "desc").get(0).getTextContent());
    return root;
  }

  static List<Element> named(Element root, String tag) {
    NodeList all = root.getElementsByTagName(tag);
    return IntStream.range(0, all.getLength())
        .mapToObj(i -> (Element) all.item(i))
        .toList();
  }

  /** The groups of one meaning. */
  static List<Element> groups(Element root, String meaning) {
    return named(root, "g").stream()
        .filter(group -> group.getAttribute("class").equals(meaning))
        .toList();
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  private static Element parsed(String svg) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(svg)))
          .getDocumentElement();
    } catch (ParserConfigurationException | SAXException | IOException broken) {
      throw new AssertionError(svg, broken);
    }
  }
}
