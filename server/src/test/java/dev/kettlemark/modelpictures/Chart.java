package dev.kettlemark.modelpictures;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jspecify.annotations.Nullable;

/** A plot of lines and marks that stays legible in grey print: each line has its own dashes, each mark its own shape. */
final class Chart {

  static final Font LABEL = new MeasuredFont(12);
  private static final Font AXIS = new MeasuredFont(13);
  private static final Color INK = Color.BLACK;
  private static final Color FAINT = new Color(0xDD, 0xDD, 0xDD);

  /** How a line is dashed: full, and ever shorter. */
  // The array never leaves the enum.
  @SuppressWarnings("ImmutableEnumChecker")
  enum Dash {
    FULL,
    LONG(14, 4),
    MEDIUM(8, 4),
    SHORT(4, 3),
    DOT(1.5f, 3),
    DASH_DOT(10, 3, 2, 3),
    DASH_DOT_DOT(10, 3, 2, 3, 2, 3);

    private final float[] pattern;

    Dash(float... pattern) {
      this.pattern = pattern;
    }

    Stroke stroke(float width) {
      return pattern.length == 0
          ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
          : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, pattern, 0);
    }
  }

  /** How a point is marked. */
  enum Mark {
    CIRCLE,
    SQUARE,
    TRIANGLE,
    DIAMOND,
    CROSS;

    private static final double HALF = 4;

    Shape shape() {
      return switch (this) {
        case CIRCLE -> new Ellipse2D.Double(-HALF, -HALF, 2 * HALF, 2 * HALF);
        case SQUARE -> new Rectangle2D.Double(-HALF, -HALF, 2 * HALF, 2 * HALF);
        case TRIANGLE -> polygon(-HALF, HALF, HALF, HALF, 0, -HALF);
        case DIAMOND -> polygon(0, -HALF - 1, HALF + 1, 0, 0, HALF + 1, -HALF - 1, 0);
        case CROSS ->
          polygon(-4, -5, 0, -1, 4, -5, 5, -4, 1, 0, 5, 4, 4, 5, 0, 1, -4, 5, -5, 4, -1, 0, -5, -4);
      };
    }

    private static Shape polygon(double... coordinates) {
      Path2D.Double path = new Path2D.Double();
      path.moveTo(coordinates[0], coordinates[1]);
      for (int i = 2; i < coordinates.length; i += 2) {
        path.lineTo(coordinates[i], coordinates[i + 1]);
      }
      path.closePath();
      return path;
    }
  }

  private final XYSeriesCollection series = new XYSeriesCollection();
  private final XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer();
  private final XYPlot plot;

  Chart(NumberAxis across, NumberAxis up) {
    TextUtils.setUseDrawRotatedStringWorkaround(false);
    plot = new XYPlot(series, across, up, renderer);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setDomainGridlinePaint(FAINT);
    plot.setRangeGridlinePaint(FAINT);
    plot.setDomainGridlineStroke(Dash.FULL.stroke(1));
    plot.setRangeGridlineStroke(Dash.FULL.stroke(1));
    plot.setOutlineVisible(false);
    plot.setNoDataMessageFont(LABEL);
    renderer.setDefaultItemLabelFont(LABEL);
    // One path for each line keeps its dashes even and the file short.
    renderer.setDrawSeriesLineAsPath(true);
  }

  static NumberAxis axis(String label, double low, double high, double step) {
    NumberAxis axis = new NumberAxis(label);
    axis.setAutoRange(false);
    axis.setRange(low, high);
    axis.setTickUnit(new NumberTickUnit(step));
    axis.setNumberFormatOverride(
        new DecimalFormat("0.#", DecimalFormatSymbols.getInstance(Locale.ROOT)));
    axis.setLabelFont(AXIS);
    axis.setTickLabelFont(LABEL);
    axis.setLabelPaint(INK);
    axis.setTickLabelPaint(INK);
    axis.setAxisLinePaint(INK);
    axis.setTickMarkPaint(INK);
    return axis;
  }

  /** Draws a function; where it is not known it gives NaN and the line has a gap. */
  Chart line(Dash dash, double from, double to, double step, DoubleUnaryOperator function) {
    XYSeries points = new XYSeries(series.getSeriesCount(), false);
    int steps = (int) Math.round((to - from) / step);
    for (int i = 0; i <= steps; i++) {
      double x = from + i * step;
      double y = function.applyAsDouble(x);
      if (!Double.isNaN(y)) {
        points.add(x, y);
      }
    }
    return add(points, dash, null, false);
  }

  /** Draws a line through points. */
  Chart through(Dash dash, List<double[]> at) {
    XYSeries points = new XYSeries(series.getSeriesCount(), false);
    at.forEach(point -> points.add(point[0], point[1]));
    return add(points, dash, null, false);
  }

  /** Draws a straight line between two points. */
  Chart straight(Dash dash, double fromX, double fromY, double toX, double toY) {
    return through(dash, List.of(new double[] {fromX, fromY}, new double[] {toX, toY}));
  }

  /** Draws points without a line. */
  Chart marks(Mark mark, boolean filled, List<double[]> at) {
    XYSeries points = new XYSeries(series.getSeriesCount(), false);
    at.forEach(point -> points.add(point[0], point[1]));
    return add(points, Dash.FULL, mark, filled);
  }

  private Chart add(XYSeries points, Dash dash, @Nullable Mark mark, boolean filled) {
    int index = series.getSeriesCount();
    series.addSeries(points);
    renderer.setSeriesPaint(index, INK);
    renderer.setSeriesStroke(index, dash.stroke(mark == null ? 1.6f : 1.2f));
    renderer.setSeriesLinesVisible(index, mark == null);
    renderer.setSeriesShapesVisible(index, mark != null);
    if (mark != null) {
      renderer.setSeriesShape(index, mark.shape());
      renderer.setSeriesShapesFilled(index, true);
      renderer.setUseFillPaint(true);
      renderer.setSeriesFillPaint(index, filled ? INK : Color.WHITE);
      renderer.setDrawOutlines(true);
      renderer.setUseOutlinePaint(true);
      renderer.setSeriesOutlinePaint(index, INK);
      renderer.setSeriesOutlineStroke(index, Dash.FULL.stroke(1.2f));
    }
    return this;
  }

  /** Writes a label whose text starts right of the point. */
  Chart right(double x, double y, String text) {
    return text(x, y, text, TextAnchor.CENTER_LEFT);
  }

  /** Writes a label whose text ends left of the point. */
  Chart left(double x, double y, String text) {
    return text(x, y, text, TextAnchor.CENTER_RIGHT);
  }

  /** Writes a label above the point. */
  Chart above(double x, double y, String text) {
    return text(x, y, text, TextAnchor.BOTTOM_CENTER);
  }

  /** Writes a label over the point, with a gap in whatever lies below. */
  Chart on(double x, double y, String text) {
    return text(x, y, text, TextAnchor.CENTER);
  }

  private Chart text(double x, double y, String text, TextAnchor anchor) {
    XYTextAnnotation label = new XYTextAnnotation(text, x, y);
    label.setFont(LABEL);
    label.setPaint(INK);
    label.setTextAnchor(anchor);
    label.setBackgroundPaint(Color.WHITE);
    plot.addAnnotation(label);
    return this;
  }

  XYPlot plot() {
    return plot;
  }

  String svg(String title, int width, int height) {
    return svg(plot, title, width, height);
  }

  static String svg(Plot plot, String title, int width, int height) {
    JFreeChart chart = new JFreeChart(null, AXIS, plot, false);
    chart.setBackgroundPaint(Color.WHITE);
    chart.setPadding(new RectangleInsets(8, 4, 4, 12));
    return Drawing.svg(chart, title, width, height);
  }
}
