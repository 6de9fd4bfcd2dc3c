package dev.kettlemark.modelpictures;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Formula;
import dev.kettlemark.modelpictures.Chart.Dash;
import dev.kettlemark.modelpictures.Chart.Mark;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.GlassTransition;
import dev.kettlemark.science.SucroseSolubility;
import dev.kettlemark.science.SyrupBoiling;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Where sucrose syrup boils, dissolves and turns to glass, and where the sample formulas lie. */
final class PhasePicture {

  private static final Composition SUCROSE = Composition.of(Component.SUCROSE);

  /** Where a finished piece is stored. */
  private static final double STORE = 20;

  private static final double LEAST = 60;

  private PhasePicture() {}

  /** A formula with the solids of each cooked syrup, its temperature, and the solids of the finished sugar phase. */
  private record Path(String name, List<double[]> cooked, double finished) {}

  /** Points closer than this share a label: % and °C. */
  private static final double[] CLOSE = {1.0, 7};

  /** Lines in a column of the key. */
  private static final int KEY_LINES = 5;

  static String svg() {
    Chart chart = new Chart(
        Chart.axis("solids in the sugar phase, %", LEAST, 100, 5),
        Chart.axis("temperature, °C", -60, 170, 20));
    chart.line(Dash.FULL, LEAST, 99.5, 0.1, PhasePicture::boiling);
    chart.through(Dash.LONG, saturation());
    chart.line(Dash.DASH_DOT, 70, 100, 0.1, PhasePicture::glass);
    chart.straight(Dash.DOT, LEAST, STORE, 100, STORE);
    chart.left(82.5, 116, "boils at sea level");
    chart.left(71.5, 62, "saturated with sucrose");
    chart.right(82.2, -44, "turns to glass");
    chart.right(67.3, STORE - 8, "stored at 20 °C");
    List<Path> paths = paths();
    for (int i = 0; i < paths.size(); i++) {
      double column = i < KEY_LINES ? 61 : 71;
      chart.right(
          column, 164 - 8 * (i % KEY_LINES), (i + 1) + "  " + paths.get(i).name());
    }
    cooked(chart, paths);
    finished(chart, paths);
    chart.marks(Mark.CIRCLE, false, List.of(new double[] {61.6, 90}));
    chart.right(62.4, 90, "cooked syrup");
    chart.marks(Mark.CIRCLE, true, List.of(new double[] {61.6, 82}));
    chart.right(62.4, 82, "sugar phase of the finished piece");
    return chart.svg("Phases of sucrose syrup", 860, 640);
  }

  private static void cooked(Chart chart, List<Path> paths) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < paths.size(); i++) {
      for (double[] cooked : paths.get(i).cooked()) {
        points.add(new double[] {cooked[0], cooked[1], i + 1});
      }
    }
    chart.marks(Mark.CIRCLE, false, points);
    for (List<double[]> group : groups(points)) {
      double[] first = group.get(0);
      double[] last = group.get(group.size() - 1);
      if (first[1] > boiling(first[0]) + 2) {
        chart.above((first[0] + last[0]) / 2, last[1] + 4, numbers(group));
      } else {
        chart.right(last[0] + 0.5, last[1] - 6, numbers(group));
      }
    }
  }

  /** Points that lie too close for labels of their own, each with the number of its formula, thinnest first. */
  private static List<List<double[]>> groups(List<double[]> points) {
    List<double[]> rest = new ArrayList<>(points);
    rest.sort(Comparator.comparingDouble(point -> point[0]));
    List<List<double[]>> groups = new ArrayList<>();
    while (!rest.isEmpty()) {
      double[] first = rest.get(0);
      List<double[]> group = rest.stream().filter(point -> close(first, point)).toList();
      rest.removeAll(group);
      groups.add(group);
    }
    return groups;
  }

  private static String numbers(List<double[]> group) {
    return group.stream()
        .map(point -> (int) point[2])
        .distinct()
        .sorted()
        .map(String::valueOf)
        .collect(Collectors.joining(", "));
  }

  private static boolean close(double[] one, double[] other) {
    return Math.abs(one[0] - other[0]) < CLOSE[0] && Math.abs(one[1] - other[1]) < CLOSE[1];
  }

  private static void finished(Chart chart, List<Path> paths) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < paths.size(); i++) {
      points.add(new double[] {paths.get(i).finished(), STORE, i + 1});
    }
    chart.marks(Mark.CIRCLE, true, points);
    for (List<double[]> group : groups(points)) {
      double middle = (group.get(0)[0] + group.get(group.size() - 1)[0]) / 2;
      chart.on(middle, STORE - 8, numbers(group));
    }
  }

  /** The sample formulas that cook a syrup, by name. */
  private static List<Path> paths() {
    Snapshot snapshot = Snapshot.of(Library.of(SampleTexts.libraryWithPantry()));
    List<Path> paths = new ArrayList<>();
    for (Document document : snapshot.library().ownDocuments()) {
      for (Entry entry : document.entries()) {
        if (entry.declaration().orElse(null) instanceof Formula) {
          Formulas.computed(snapshot, entry).flatMap(PhasePicture::path).ifPresent(paths::add);
        }
      }
    }
    return paths;
  }

  private static Optional<Path> path(ComputedFormula formula) {
    List<double[]> cooked = formula.process().stages().stream()
        .flatMap(stage -> stage.steps().stream())
        .filter(step -> step.step().is("cook"))
        .flatMap(step -> step.after().stream())
        .flatMap(parcel ->
            solids(parcel)
                .map(solids -> new double[] {solids, middle(parcel.temperature())})
                .stream())
        .toList();
    Optional<Double> finished =
        formula.process().last().map(StageResult::left).flatMap(PhasePicture::solids);
    return cooked.isEmpty()
        ? Optional.empty()
        : finished.map(
            solids -> new Path(formula.formula().name().value().replace('-', ' '), cooked, solids));
  }

  /** Sugars and polyols as a share of themselves with the water, in percent. */
  private static Optional<Double> solids(StageParcel parcel) {
    return parcel.composition().toOptional().map(composition -> {
      double sweet = composition.sweetSolids().fraction();
      return 100 * sweet / (sweet + composition.water().fraction());
    });
  }

  private static double middle(Band<Temperature> band) {
    return (band.low().celsius() + band.high().celsius()) / 2;
  }

  private static double boiling(double solids) {
    return SyrupBoiling.boilingPoint(syrup(solids), Pressure.STANDARD_ATMOSPHERE)
        .map(Temperature::celsius)
        .orElse(Double.NaN);
  }

  private static List<double[]> saturation() {
    List<double[]> points = new ArrayList<>();
    for (double celsius = 0; celsius <= 140; celsius += 1) {
      double at = celsius;
      SucroseSolubility.charles(Temperature.ofCelsius(at)).map(Ratio::percent).ifKnown(solids -> {
        // Beyond the boiling curve there is no such solution under one atmosphere.
        if (at <= boiling(solids)) {
          points.add(new double[] {solids, at});
        }
      });
    }
    return points;
  }

  private static double glass(double solids) {
    return GlassTransition.of(syrup(solids)).map(PhasePicture::middle).orElse(Double.NaN);
  }

  private static Composition syrup(double solids) {
    return SUCROSE.withWaterFraction(Ratio.ofPercent(100 - solids));
  }
}
