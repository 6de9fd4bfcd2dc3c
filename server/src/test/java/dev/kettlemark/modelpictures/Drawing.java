package dev.kettlemark.modelpictures;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.w3c.dom.Document;

/** Turns a chart into SVG that is the same, byte for byte, on every machine. */
final class Drawing {

  private static final String NAME_SPACE = "http://www.w3.org/2000/svg";

  private Drawing() {}

  static String svg(JFreeChart chart, String title, int width, int height) {
    Document document = emptyDocument();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment(title);
    context.setPrecision(2);
    Surface surface = new Surface(context);
    surface.setSVGCanvasSize(new Dimension(width, height));
    chart.draw(surface, new Rectangle(width, height));
    StringWriter text = new StringWriter();
    try {
      surface.stream(text, true);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return text.toString()
        .replace("\r\n", "\n")
        .replace("font-family:sans-serif", "font-family:" + MeasuredFont.FAMILY)
        .replace("font-family:'Dialog'", "font-family:" + MeasuredFont.FAMILY);
  }

  private static Document emptyDocument() {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      return factory
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(NAME_SPACE, "svg", null);
    } catch (ParserConfigurationException missing) {
      throw new IllegalStateException(missing);
    }
  }

  /** A surface that measures text by {@link MeasuredFont}. */
  private static final class Surface extends SVGGraphics2D {

    Surface(SVGGeneratorContext context) {
      super(context, false);
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
      if (font instanceof MeasuredFont measured) {
        return measured.metrics();
      }
      throw new IllegalStateException("a label in a font of the machine: " + font);
    }
  }
}
