package dev.kettlemark.pictures;

import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes one picture as SVG.
 *
 * <p>Ink is the colour of the text around the picture, or what the page sets as {@code --kettlemark-ink}; paper is
 * whatever lies behind it, or {@code --kettlemark-paper}. Every id starts with that of the picture, so that several
 * stand on one page.
 */
final class Svg {

  /** Ahead of each id and class, so that nothing on the page is meant by chance. */
  private static final String OURS = "kettlemark-";

  private static final String STYLE = """
      #ID{color:var(--kettlemark-ink,currentColor);font-family:sans-serif;max-width:100%;height:auto}
      #ID text{fill:currentColor;font-size:12px}
      #ID .head{font-weight:bold;font-size:13px}
      #ID .small{font-size:11px}
      #ID .box{fill:var(--kettlemark-paper,none);stroke:currentColor;stroke-width:1.2}
      #ID .line{fill:none;stroke:currentColor;stroke-width:1.2}
      #ID .tile{stroke:currentColor;stroke-width:1.2}
      #ID .fine{fill:none;stroke:currentColor;stroke-width:.6;stroke-opacity:.6}
      #ID .dashed{stroke-dasharray:5 3}
      #ID .dotted{stroke-dasharray:1.5 3}
      #ID .thick{stroke-width:2.2}
      #ID .ink{fill:currentColor;stroke:none}
      #ID .band{fill:currentColor;fill-opacity:.18;stroke:currentColor;stroke-width:1}
      """;

  private final String id;
  private final StringBuilder body = new StringBuilder();

  Svg(PictureKind kind, String formula) {
    this.id = OURS + kind.word() + "-" + safe(formula);
  }

  /** An id of a part of this picture. */
  String id(String part) {
    return id + "-" + safe(part);
  }

  /** Opens a group; {@code what} tells a reader of the text what it is. */
  void open(String what, String part) {
    body.append("<g class=\"").append(what).append("\" id=\"").append(id(part)).append("\">\n");
  }

  void close() {
    body.append("</g>\n");
  }

  void rect(String style, double x, double y, double width, double height, double round) {
    body.append("<rect class=\"%s\"".formatted(style));
    attribute("x", x);
    attribute("y", y);
    attribute("width", width);
    attribute("height", height);
    if (round > 0) {
      attribute("rx", round);
    }
    body.append("/>\n");
  }

  /** A rectangle filled with a pattern of this picture. */
  void filled(String pattern, double x, double y, double width, double height) {
    body.append("<rect class=\"tile\" fill=\"url(#%s)\"".formatted(id(pattern)));
    attribute("x", x);
    attribute("y", y);
    attribute("width", width);
    attribute("height", height);
    body.append("/>\n");
  }

  void line(String style, List<Point> points) {
    body.append("<polyline class=\"%s\" points=\"%s\"/>\n".formatted(style, places(points)));
  }

  void area(String style, List<Point> points) {
    body.append("<polygon class=\"%s\" points=\"%s\"/>\n".formatted(style, places(points)));
  }

  /** A line of text that starts at a place. */
  void text(String style, double x, double y, String text) {
    body.append("<text class=\"%s\"".formatted(style));
    attribute("x", x);
    attribute("y", y);
    body.append('>').append(escaped(text)).append("</text>\n");
  }

  /** A line of text that ends at a place. */
  void textTo(String style, double x, double y, String text) {
    body.append("<text class=\"%s\" text-anchor=\"end\"".formatted(style));
    attribute("x", x);
    attribute("y", y);
    body.append('>').append(escaped(text)).append("</text>\n");
  }

  /** A pattern of tiles, to fill with. */
  void pattern(String name, int size, String tile) {
    body.append("<pattern id=\"" + id(name) + "\" width=\"" + size + "\" height=\"" + size
        + "\" patternUnits=\"userSpaceOnUse\">" + tile + "</pattern>\n");
  }

  /** The whole picture. */
  Picture picture(String title, String words, double width, double height) {
    String size = " viewBox=\"0 0 %s %s\" width=\"%s\" height=\"%s\""
        .formatted(number(width), number(height), number(width), number(height));
    String head = "<svg xmlns=\"http://www.w3.org/2000/svg\" id=\"" + id + "\"" + size
        + " role=\"img\" aria-labelledby=\"" + id("title") + " " + id("desc") + "\">\n"
        + "<title id=\"" + id("title") + "\">" + escaped(title) + "</title>\n"
        + "<desc id=\"" + id("desc") + "\">" + escaped(words) + "</desc>\n";
    return new Picture(title, words, id, head, STYLE.replace("ID", id), body + "</svg>\n");
  }

  private void attribute(String name, double value) {
    body.append(' ').append(name).append("=\"").append(number(value)).append('"');
  }

  private static String places(List<Point> points) {
    return points.stream()
        .map(point -> number(point.x()) + "," + number(point.y()))
        .collect(Collectors.joining(" "));
  }

  /** Tenths of a pixel are finer than anybody sees, and the same on every machine. */
  private static String number(double value) {
    return Display.trimmed(value, 1);
  }

  /** A name as a part of an id: whatever is no plain letter, figure or dash is spelt by its number. */
  private static String safe(String name) {
    StringBuilder safe = new StringBuilder();
    name.codePoints().forEach(one -> {
      boolean plain = one == '-'
          || (one >= '0' && one <= '9')
          || (one >= 'a' && one <= 'z')
          || (one >= 'A' && one <= 'Z');
      safe.append(plain ? Character.toString(one) : "_" + one);
    });
    return safe.toString();
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints().forEach(one -> {
      switch (one) {
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '&' -> escaped.append("&amp;");
        default -> escaped.append(allowed(one) ? Character.toString(one) : "\uFFFD");
      }
    });
    return escaped.toString();
  }

  /** The characters that XML 1.0 allows: W3C, Extensible Markup Language, fifth edition, section 2.2. */
  private static boolean allowed(int one) {
    return one == '\t'
        || one == '\n'
        || (one >= 0x20 && one <= 0xD7FF)
        || (one >= 0xE000 && one <= 0xFFFD)
        || one >= 0x10000;
  }
}
