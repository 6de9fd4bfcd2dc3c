package dev.kettlemark.modelpictures;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.modelpictures.Chart.Dash;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.StandardAtmosphere;
import dev.kettlemark.science.SyrupBoiling;

/** The water that a cook leaves, by the sea and in the mountains. */
final class AltitudePicture {

  private static final Composition SUCROSE = Composition.of(Component.SUCROSE);

  private AltitudePicture() {}

  static String svg() {
    Chart chart = new Chart(
        Chart.axis("sucrose syrup cooked to, °C", 90, 165, 5),
        Chart.axis("water left, %", 0, 40, 5));
    curve(chart, Dash.FULL, 0);
    curve(chart, Dash.MEDIUM, 1000);
    curve(chart, Dash.DOT, 2000);
    chart.right(106, 30, "at the sea");
    chart.on(104, left(104, 1000), "1000 m");
    chart.left(97, 30, "2000 m");
    chart.right(128, 22, "Read across: the same water at a lower temperature.");
    chart.right(128, 19, "Read up: the same temperature leaves less water.");
    return chart.svg("Water left after cooking", 760, 480);
  }

  private static void curve(Chart chart, Dash dash, double metres) {
    chart.line(dash, 90, 165, 0.1, celsius -> within(left(celsius, metres)));
  }

  private static double within(double percent) {
    return percent <= 40 ? percent : Double.NaN;
  }

  private static double left(double celsius, double metres) {
    return StandardAtmosphere.pressureAt(Length.ofMetres(metres))
        .flatMap(
            pressure -> SyrupBoiling.waterLeft(SUCROSE, Temperature.ofCelsius(celsius), pressure))
        .map(Ratio::percent)
        .orElse(Double.NaN);
  }
}
