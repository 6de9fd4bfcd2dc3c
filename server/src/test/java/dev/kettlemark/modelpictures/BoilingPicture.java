package dev.kettlemark.modelpictures;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.modelpictures.Chart.Dash;
import dev.kettlemark.modelpictures.Chart.Mark;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.PublishedBoiling;
import dev.kettlemark.science.SaturationLine;
import dev.kettlemark.science.SyrupBoiling;
import java.util.List;
import java.util.Map;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;

/** The boiling point of sucrose syrup against what is printed, and the differences below it. */
final class BoilingPicture {

  private static final double WATER =
      known(SaturationLine.boilingPoint(Pressure.STANDARD_ATMOSPHERE).map(Temperature::celsius));

  private static final Map<PublishedBoiling, Mark> MARKS = Map.of(
      PublishedBoiling.CLAASSEN, Mark.TRIANGLE,
      PublishedBoiling.BROWNE, Mark.CIRCLE,
      PublishedBoiling.BROWNE_REMEMBERED, Mark.CIRCLE,
      PublishedBoiling.CANDY, Mark.SQUARE,
      PublishedBoiling.STAGES, Mark.CROSS);

  private BoilingPicture() {}

  static String svg() {
    NumberAxis across = Chart.axis("sucrose, % by mass", 35, 100, 5);
    Chart curve = new Chart(across, Chart.axis("boiling point at sea level, °C", 98, 170, 10))
        .line(Dash.FULL, 35, 99.5, 0.1, BoilingPicture::model);
    Chart differences = new Chart(across, Chart.axis("printed less model, °C", -6, 6, 2))
        .straight(Dash.FULL, 35, 0, 100, 0);
    for (PublishedBoiling table : PublishedBoiling.values()) {
      boolean filled = table == PublishedBoiling.CLAASSEN;
      curve.marks(MARKS.getOrDefault(table, Mark.CROSS), filled, points(table));
      differences.marks(MARKS.getOrDefault(table, Mark.CROSS), filled, differences(table));
    }
    label(curve);
    CombinedDomainXYPlot both = new CombinedDomainXYPlot(across);
    both.setGap(14);
    both.add(curve.plot(), 3);
    both.add(differences.plot(), 2);
    return Chart.svg(both, "Boiling point of sucrose syrups", 760, 640);
  }

  private static void label(Chart curve) {
    curve.marks(Mark.TRIANGLE, true, List.of(new double[] {37, 164}));
    curve.marks(Mark.CIRCLE, false, List.of(new double[] {37, 158}));
    curve.marks(Mark.SQUARE, false, List.of(new double[] {37, 152}));
    curve.marks(Mark.CROSS, false, List.of(new double[] {37, 146}));
    curve.straight(Dash.FULL, 36, 140, 38, 140);
    curve.right(38.5, 164, "Claassen's table of cane sugar");
    curve.right(38.5, 158, "Browne's table after Gerlach");
    curve.right(38.5, 152, "candy makers' graph");
    curve.right(38.5, 146, "trade's pairs of stage and solids");
    curve.right(38.5, 140, "the model");
  }

  private static List<double[]> points(PublishedBoiling table) {
    return table.points().stream()
        .map(point ->
            new double[] {point.solids().percent(), WATER + point.aboveWater().celsius()})
        .filter(point -> point[0] >= 35)
        .toList();
  }

  private static List<double[]> differences(PublishedBoiling table) {
    return points(table).stream()
        .map(point -> new double[] {point[0], point[1] - model(point[0])})
        .filter(point -> Math.abs(point[1]) <= 6)
        .toList();
  }

  private static double model(double solids) {
    Composition syrup =
        Composition.of(Component.SUCROSE).withWaterFraction(Ratio.ofPercent(100 - solids));
    return known(
        SyrupBoiling.boilingPoint(syrup, Pressure.STANDARD_ATMOSPHERE).map(Temperature::celsius));
  }

  private static double known(Outcome<Double> outcome) {
    return outcome.orElse(Double.NaN);
  }
}
