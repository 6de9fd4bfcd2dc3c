package dev.kettlemark.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Texts to look at, and what is shown of them as a tree. */
final class Previewed {

  private Previewed() {}

  static Snapshot samples() {
    return Snapshot.of(Library.of(SampleTexts.libraryWithPantry()), Today.DAY);
  }

  static Snapshot text(String text) {
    return alone(Document.of("test.kettle", text));
  }

  static Snapshot alone(Document document) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(document);
    return Snapshot.of(Library.of(all), Today.DAY);
  }

  static PreviewRequest request(View view, String reader, String tag) {
    return PreviewRequest.of(view.word(), Optional.of(reader), Optional.of(tag)).orElseThrow();
  }

  static PreviewRequest request(View view) {
    return new PreviewRequest(view, Optional.empty(), Optional.empty());
  }

  /** Every section of a user's texts. */
  static List<Entry> entries(Snapshot snapshot) {
    return snapshot.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .toList();
  }

  /** The line of the text that an anchor names. */
  static String line(Snapshot snapshot, Anchor anchor) {
    Document document = snapshot.library().document(anchor.place().uri()).orElseThrow();
    int line = document.text().source().lineAt(anchor.place().span().start());
    return document.text().source().text().lines().toList().get(line).strip();
  }

  static Element element(Element root, String id) {
    return all(root).stream()
        .filter(one -> one.getAttribute("id").equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no element " + id));
  }

  static List<Element> all(Element root) {
    NodeList list = root.getElementsByTagName("*");
    return IntStream.range(0, list.getLength())
        .mapToObj(list::item)
        .map(Element.class::cast)
        .toList();
  }

  /** What every preview must be, so that it can stand in a page that allows no script and no style. */
  static Element holds(Preview preview) {
    Element root = parsed(preview.html());
    assertEquals("kettlemark-preview", root.getAttribute("class"));
    Set<String> ids = new HashSet<>();
    for (Element one : all(root)) {
      String tag = one.getTagName();
      assertFalse(Set.of("script", "style", "link", "img", "iframe", "object").contains(tag), tag);
      for (int i = 0; i < one.getAttributes().getLength(); i++) {
        String name = one.getAttributes().item(i).getNodeName();
        String value = one.getAttributes().item(i).getNodeValue();
        boolean isInert =
            !name.startsWith("on") && !Set.of("style", "src", "href").contains(name);
        assertTrue(isInert, () -> tag + " has " + name);
        assertTrue(!value.contains("url(") || value.startsWith("url(#"), value);
      }
      assertTrue(
          one.getAttribute("id").isEmpty() || ids.add(one.getAttribute("id")),
          () -> "twice: " + one.getAttribute("id"));
    }
    preview.anchors().forEach(anchor -> assertTrue(ids.contains(anchor.id()), anchor.id()));
    assertFalse(preview.style().contains("@import"));
    assertFalse(preview.style().contains("url("), "a style that fetches");
    assertFalse(root.getTextContent().isBlank());
    return root;
  }

  private static Element parsed(String html) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(html)))
          .getDocumentElement();
    } catch (SAXException | IOException | ParserConfigurationException broken) {
      throw new AssertionError(html, broken);
    }
  }
}
