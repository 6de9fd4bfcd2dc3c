package dev.kettlemark.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * An element of a page that is HTML and well-formed XML at once.
 *
 * <p>Text and attributes only come in by methods that escape them, so that no text of a source can become
 * markup.
 */
public final class Element {

  private static final Set<String> VOID = Set.of("meta", "br", "col", "hr", "img", "input");

  /** Elements that start a line of their own in the file. */
  private static final Set<String> BLOCKS = Set.of(
      "html",
      "head",
      "body",
      "meta",
      "title",
      "style",
      "script",
      "header",
      "main",
      "footer",
      "section",
      "article",
      "h1",
      "h2",
      "h3",
      "p",
      "ul",
      "ol",
      "li",
      "dl",
      "div",
      "dt",
      "dd",
      "table",
      "caption",
      "thead",
      "tbody",
      "tr",
      "th",
      "td",
      "figure",
      "figcaption",
      "nav");

  private final String name;
  private final Map<String, String> attributes = new LinkedHashMap<>();
  private final List<Object> inside = new ArrayList<>();

  private record Data(String text) {}

  private Element(String name) {
    this.name = name;
  }

  public static Element of(String name) {
    return new Element(name);
  }

  public Element with(String attribute, String value) {
    attributes.put(attribute, value);
    return this;
  }

  public Element text(String text) {
    inside.add(text);
    return this;
  }

  /** Data of a kind that has no markup in it; it must have escaped what would be some. */
  public Element data(String text) {
    if (text.indexOf('<') >= 0 || text.indexOf('&') >= 0) {
      throw new IllegalArgumentException("this would be read as markup");
    }
    inside.add(new Data(text));
    return this;
  }

  /** A picture as an SVG element, which escapes the texts in it itself. */
  Element picture(String svg) {
    inside.add(new Data("\n" + svg));
    return this;
  }

  public Element add(Element... elements) {
    inside.addAll(List.of(elements));
    return this;
  }

  public Element addAll(List<Element> elements) {
    inside.addAll(elements);
    return this;
  }

  /** The first element of a name directly inside. */
  Optional<Element> child(String wanted) {
    return inside.stream()
        .flatMap(one -> one instanceof Element element ? Stream.of(element) : Stream.empty())
        .filter(element -> element.name.equals(wanted))
        .findFirst();
  }

  /** Puts elements before what stands inside at a place. */
  Element insert(int place, Element... elements) {
    inside.addAll(place, List.of(elements));
    return this;
  }

  public boolean isEmpty() {
    return inside.isEmpty();
  }

  /** The whole page. */
  public String page() {
    StringBuilder out = new StringBuilder("<!DOCTYPE html>\n");
    write(out);
    return out.append('\n').toString();
  }

  /** The element alone. */
  String markup() {
    StringBuilder out = new StringBuilder();
    write(out);
    return out.append('\n').toString();
  }

  private void write(StringBuilder out) {
    if (BLOCKS.contains(name) && !out.isEmpty() && out.charAt(out.length() - 1) != '\n') {
      out.append('\n');
    }
    out.append('<').append(name);
    attributes.forEach((key, value) ->
        out.append(' ').append(key).append("=\"").append(escaped(value)).append('"'));
    if (VOID.contains(name)) {
      out.append("/>");
      return;
    }
    out.append('>');
    for (Object one : inside) {
      if (one instanceof Element element) {
        element.write(out);
      } else if (one instanceof Data data) {
        out.append(data.text());
      } else {
        out.append(escaped(one.toString()));
      }
    }
    out.append("</").append(name).append('>');
  }

  private static String escaped(String text) {
    return text.chars().allMatch(Element::isPlain) ? text : changed(text);
  }

  /** Most texts hold nothing that must be written otherwise. */
  private static boolean isPlain(int c) {
    return c >= 0x20 && c != '&' && c != '<' && c != '>' && c != '"';
  }

  private static String changed(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().filter(Element::isXml).forEach(c -> {
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        default -> out.appendCodePoint(c);
      }
    });
    return out.toString();
  }

  /** XML 1.0, section 2.2, allows no other control characters. */
  private static boolean isXml(int c) {
    return c >= 0x20 || c == '\n' || c == '\t';
  }
}
