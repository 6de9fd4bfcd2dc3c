package dev.kettlemark.modelpictures;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.font.FontRenderContext;
import java.awt.font.LineMetrics;
import java.util.Locale;

/**
 * A font whose measures are written here and not read from the machine.
 *
 * <p>A chart is laid out by the widths of its labels. Taken from whatever fonts a machine has, they would make the same
 * chart differ from one machine to the next, and its pinned file with it. The widths are those of Helvetica, which Arial and
 * Liberation Sans share: Adobe's font metrics, from memory.
 */
final class MeasuredFont extends Font {

  private static final long serialVersionUID = 1;

  /** What the pictures ask a viewer for, best first. */
  static final String FAMILY = "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif";

  private static final float ASCENT = 0.905f;
  private static final float DESCENT = 0.212f;

  /** Of the em, for characters that differ from a figure. */
  private static final double FIGURE = 0.556;

  private static final double NARROW = 0.24;
  private static final double SLIM = 0.30;
  private static final double BROAD = 0.68;
  private static final double WIDE = 0.86;

  MeasuredFont(int size) {
    super(Font.SANS_SERIF, Font.PLAIN, size);
  }

  @Override
  public String getFamily() {
    return FAMILY;
  }

  @Override
  public String getFamily(Locale locale) {
    return FAMILY;
  }

  @Override
  public LineMetrics getLineMetrics(String text, FontRenderContext context) {
    return new Line(text.length(), size);
  }

  FontMetrics metrics() {
    return new Metrics(this);
  }

  private static double width(char one) {
    if ("ijl|'".indexOf(one) >= 0) {
      return NARROW;
    }
    if (" ft.,:;/()[]-rI!".indexOf(one) >= 0) {
      return SLIM;
    }
    if ("mMW%".indexOf(one) >= 0) {
      return WIDE;
    }
    return Character.isUpperCase(one) ? BROAD : FIGURE;
  }

  private static final class Metrics extends FontMetrics {

    private static final long serialVersionUID = 1;

    Metrics(Font font) {
      super(font);
    }

    @Override
    public int getAscent() {
      return Math.round(font.getSize() * ASCENT);
    }

    @Override
    public int getDescent() {
      return Math.round(font.getSize() * DESCENT);
    }

    @Override
    public int charWidth(char one) {
      return (int) Math.round(font.getSize() * width(one));
    }

    @Override
    public int charsWidth(char[] text, int from, int length) {
      return stringWidth(new String(text, from, length));
    }

    @Override
    public int stringWidth(String text) {
      return (int) Math.round(
          font.getSize() * text.chars().mapToDouble(one -> width((char) one)).sum());
    }
  }

  private static final class Line extends LineMetrics {

    private final int characters;
    private final int size;

    Line(int characters, int size) {
      this.characters = characters;
      this.size = size;
    }

    @Override
    public int getNumChars() {
      return characters;
    }

    @Override
    public float getAscent() {
      return size * ASCENT;
    }

    @Override
    public float getDescent() {
      return size * DESCENT;
    }

    @Override
    public float getLeading() {
      return 0;
    }

    @Override
    public float getHeight() {
      return getAscent() + getDescent();
    }

    @Override
    public int getBaselineIndex() {
      return Font.ROMAN_BASELINE;
    }

    @Override
    public float[] getBaselineOffsets() {
      return new float[3];
    }

    @Override
    public float getStrikethroughOffset() {
      return 0;
    }

    @Override
    public float getStrikethroughThickness() {
      return 0;
    }

    @Override
    public float getUnderlineOffset() {
      return 0;
    }

    @Override
    public float getUnderlineThickness() {
      return 0;
    }
  }
}
