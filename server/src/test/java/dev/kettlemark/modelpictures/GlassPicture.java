package dev.kettlemark.modelpictures;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.modelpictures.Chart.Dash;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.GlassTransition;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.FieldPosition;
import java.util.Locale;
import java.util.Map;
import org.jfree.chart.axis.NumberAxis;

/** The glass transition of sugars and blends against their water. */
final class GlassPicture {

  private static final double MOST_WATER = 12;

  /** Typical split of an acid-converted syrup, from memory of suppliers' tables. */
  private static final Map<Component, Double> SYRUP_42 = Map.of(
      Component.GLUCOSE, 19.0,
      Component.MALTOSE, 14.0,
      Component.MALTOTRIOSE, 12.0,
      Component.HIGHER_SACCHARIDES, 55.0);

  private GlassPicture() {}

  static String svg() {
    // Room for the labels lies left of dryness; its figures stay unwritten.
    NumberAxis across = Chart.axis("water in the sugar phase, %", -4, MOST_WATER, 1);
    across.setNumberFormatOverride(new NotNegative());
    Chart chart = new Chart(across, Chart.axis("glass transition, °C", -50, 95, 10));
    chart.straight(Dash.FULL, 0, 25, MOST_WATER, 25);
    chart.above(10.2, 26, "a room at 25 °C");
    chart.above(10.2, 34, "above the line: a glass");
    curve(chart, "maltose", Dash.LONG, Map.of(Component.MALTOSE, 100.0));
    curve(chart, "42 DE glucose syrup", Dash.DASH_DOT, SYRUP_42);
    curve(chart, "sucrose", Dash.FULL, Map.of(Component.SUCROSE, 100.0));
    curve(
        chart,
        "85 sucrose : 15 glucose",
        Dash.MEDIUM,
        Map.of(Component.SUCROSE, 85.0, Component.GLUCOSE, 15.0));
    curve(
        chart,
        "50 sucrose : 50 invert",
        Dash.SHORT,
        Map.of(Component.SUCROSE, 50.0, Component.GLUCOSE, 25.0, Component.FRUCTOSE, 25.0));
    curve(chart, "glucose", Dash.DOT, Map.of(Component.GLUCOSE, 100.0));
    curve(chart, "fructose", Dash.DASH_DOT_DOT, Map.of(Component.FRUCTOSE, 100.0));
    return chart.svg("Glass transition against water", 760, 560);
  }

  /** Writes nothing for a negative figure. */
  private static final class NotNegative extends DecimalFormat {

    private static final long serialVersionUID = 1;

    NotNegative() {
      super("0", DecimalFormatSymbols.getInstance(Locale.ROOT));
    }

    @Override
    public StringBuffer format(double figure, StringBuffer text, FieldPosition field) {
      return figure < -0.5 ? text : super.format(figure, text, field);
    }
  }

  private static void curve(Chart chart, String name, Dash dash, Map<Component, Double> percents) {
    Composition dry = Composition.ofPercents(percents);
    chart.line(dash, 0, MOST_WATER, 0.1, water -> glass(dry, water));
    chart.left(-0.35, glass(dry, 0), name);
  }

  /** The middle of the band between both values of k. */
  private static double glass(Composition dry, double water) {
    return GlassTransition.of(dry.withWaterFraction(Ratio.ofPercent(water)))
        .map(band -> (band.low().celsius() + band.high().celsius()) / 2)
        .orElse(Double.NaN);
  }
}
