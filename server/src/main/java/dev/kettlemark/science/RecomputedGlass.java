package dev.kettlemark.science;

import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Crystals and glass, computed apart from this code from the stated equations. */
final class RecomputedGlass {

  private static final Check.Source CHARLES =
      Check.Source.recomputed("Charles 1960, computed apart from the equation");
  private static final Check.Source VAVRINECZ =
      Check.Source.recomputed("Vavrinecz 1962, computed apart from the equation");
  private static final Check.Source OTHER_SUGARS = Check.Source.recomputed(
      "effect of other sugars on solubility, thermodynamic estimate, computed apart");
  private static final Check.Source GLASS =
      Check.Source.recomputed("Gordon and Taylor 1952 with constants of Roos 1993, computed apart");
  private static final Check.Source TABLE =
      Check.Source.remembered("Roos and Karel 1991, table of maltodextrins and syrups");
  private static final Check.Source DEFINITION =
      Check.Source.recomputed("definition of DE, computed apart");

  private static final Temperature ROOM = Temperature.ofCelsius(25);
  private static final Temperature TWENTY = Temperature.ofCelsius(20);

  /** The study does not say how long the longer saccharides of its agave syrup are. */
  private static final double AGAVE_TOLERANCE = 3.1;

  /**
   * The figures are of the thermodynamic estimate that the exponentials were fitted to, and start from Vavrinecz's
   * solubility, which lies 0.12 above Charles's at 20 °C.
   */
  private static final double ESTIMATE_TOLERANCE = 0.25;

  private RecomputedGlass() {}

  static List<Check> all() {
    return Stream.of(
            solubility(), saturated(), withWater(), softening(), cooked(), grades(), chains())
        .flatMap(checks -> checks)
        .toList();
  }

  private static Stream<Check> solubility() {
    return FigureGrid.of("""
            °C  | Charles | Vavrinecz | perWater
            0   | 64.40   | 64.45     | 181.3
            20  | 66.60   | 66.72     | 200.5
            25  | 67.35   | 67.47     | 207.4
            40  | 70.01   | 70.10     | 234.5
            60  | 74.20   | 74.26     | 288.6
            80  | 78.74   | 78.68     | 369.0
            100 | 83.18   | 82.65     | 476.4
            120 | 87.11   | -         | -
            140 | 90.07   | -         | -
            """).cells().map(cell -> {
      Temperature at = Temperature.ofCelsius(cell.row());
      Outcome<Ratio> vavrinecz = SucroseSolubility.vavrinecz(at);
      return switch (cell.column()) {
        case "Charles" ->
          solubility(CHARLES, cell, "%", SucroseSolubility.charles(at).map(Ratio::percent));
        case "Vavrinecz" -> solubility(VAVRINECZ, cell, "%", vavrinecz.map(Ratio::percent));
        default ->
          solubility(
              VAVRINECZ,
              cell,
              "g/100 g water",
              vavrinecz.map(s -> 100 * s.fraction() / s.complement().fraction()));
      };
    });
  }

  private static Check solubility(
      Check.Source source, FigureGrid.Cell cell, String unit, Outcome<Double> computed) {
    String author = cell.column().equals("Charles") ? "Charles" : "Vavrinecz";
    return source.check(
        "sucrose solubility",
        author + " at " + cell.row() + " °C",
        unit,
        cell.figure(),
        computed,
        cell.lastDigit());
  }

  private static Stream<Check> saturated() {
    return Stream.of(
        saturated("invert", 1, 1, 75.2),
        saturated("invert", 2, 1, 71.9),
        saturated("invert", 1, 2, 79.2),
        saturated("42 DE", 1, 1, 73.7),
        saturated("42 DE", 2, 1, 71.0));
  }

  private static Check saturated(String other, double sucrose, double share, double figure) {
    Composition blend =
        ReferenceBlends.mix(sucrose, ReferenceBlends.SUCROSE, share, ReferenceBlends.named(other));
    return OTHER_SUGARS.check(
        "sucrose solubility",
        "sucrose and %s %.0f : %.0f at 20 °C, solids".formatted(other, sucrose, share),
        "%",
        figure,
        SucroseSolubility.saturatedSolids(blend, TWENTY).map(Ratio::percent),
        ESTIMATE_TOLERANCE);
  }

  private static Stream<Check> withWater() {
    return FigureGrid.of("""
            % water | sucrose | glucose | fructose | maltose | 42 DE
            0       | 62      | 31      | 5        | 87      | 79
            1       | 53.1    | 23.8    | -0.2     | 74.3    | 66.9
            2       | 44.8    | 17.0    | -5.1     | 62.8    | 55.9
            3       | 37.0    | 10.7    | -9.7     | 52.3    | 45.9
            4       | 29.7    | 4.8     | -14.1    | 42.6    | 36.6
            5       | 22.9    | -0.8    | -18.3    | 33.7    | 28.1
            6       | 16.5    | -6.0    | -22.3    | 25.5    | 20.3
            8       | 4.8     | -15.7   | -29.8    | 10.9    | 6.2
            10      | -5.6    | -24.3   | -36.6    | -1.8    | -6.0
            15      | -27.3   | -42.5   | -51.2    | -27.2   | -30.4
            """)
        .cells()
        .map(cell -> glass(
            cell.column() + ", " + cell.row() + " % water",
            cell,
            GlassTransition.of(
                ReferenceBlends.withWater(ReferenceBlends.named(cell.column()), cell.row())),
            cell.lastDigit()));
  }

  private static Stream<Check> cooked() {
    return FigureGrid.of("""
            °C  | sucrose | 85:15 sucrose:glucose | 60:40 sucrose:42 DE | 50:50 sucrose:invert | agave
            118 | -15.9   | -20.0 | -19.4 | -34.5 | -43.1
            127 | 3.4     | -1.0  | 1.4   | -16.9 | -27.6
            143 | 28.0    | 23.2  | 28.8  | 5.8   | -8.0
            150 | 37.9    | 33.0  | 40.1  | 15.1  | -0.1
            """).cells().map(cell -> {
      Composition blend = ReferenceBlends.named(cell.column());
      return glass(
          cell.column() + " cooked to " + cell.row() + " °C",
          cell,
          SyrupBoiling.waterLeft(
                  blend, Temperature.ofCelsius(cell.row()), Pressure.STANDARD_ATMOSPHERE)
              .map(blend::withWaterFraction)
              .flatMap(GlassTransition::of),
          cell.column().equals("agave") ? AGAVE_TOLERANCE : cell.lastDigit());
    });
  }

  /** The figures were computed with one value of k, which lies at one end of the band. */
  private static Check glass(
      String subject, FigureGrid.Cell cell, Outcome<Band<Temperature>> band, double tolerance) {
    return GLASS.check(
        "glass transition",
        subject,
        "°C",
        cell.figure(),
        band.map(ends -> nearer(ends.map(Temperature::celsius), cell.figure())),
        tolerance);
  }

  private static double nearer(Band<Double> ends, double figure) {
    return Math.abs(ends.low() - figure) < Math.abs(ends.high() - figure)
        ? ends.low()
        : ends.high();
  }

  private static Stream<Check> softening() {
    return Stream.of(
        softening("sucrose", 4.7),
        softening("sucrose", 4.1),
        softening("maltose", 6.1),
        softening("lactose", 6.6),
        softening("42 DE", 5.4),
        softening("60:40 sucrose:42 DE", 4.6),
        softening("85:15 sucrose:glucose", 4.1),
        softening("glucose", 0.8),
        softening("50:50 sucrose:invert", 1.7));
  }

  private static Check softening(String blend, double figure) {
    return GLASS.check(
        "glass transition",
        blend + ", water that lets it soften at 25 °C",
        "%",
        figure,
        GlassTransition.waterFor(ReferenceBlends.named(blend), ROOM)
            .map(ends -> nearer(ends.map(Ratio::percent), figure)),
        0.1);
  }

  private static Stream<Check> grades() {
    return Map.of(5, 188, 10, 160, 20, 141, 25, 121, 36, 100, 42, 79, 63, 54, 100, 31)
        .entrySet()
        .stream()
        .sorted(Map.Entry.comparingByKey())
        .map(grade -> TABLE.check(
            "glass transition",
            "dry syrup of DE " + grade.getKey(),
            "°C",
            grade.getValue(),
            DextroseEquivalent.glassTransition(grade.getKey()).map(Temperature::celsius),
            0.5));
  }

  private static Stream<Check> chains() {
    return FigureGrid.of("""
            DE  | g/mol | units
            20  | 901   | 5.45
            28  | 643   | 3.86
            36  | 500   | 2.98
            42  | 429   | 2.54
            60  | 300   | 1.74
            63  | 286   | 1.65
            100 | 180   | 1
            """)
        .cells()
        .map(cell -> cell.column().equals("g/mol")
            ? DEFINITION.check(
                "dextrose equivalent",
                "mean molar mass of DE " + Math.round(cell.row()),
                "g/mol",
                cell.figure(),
                DextroseEquivalent.meanMolarMass(cell.row()),
                cell.lastDigit())
            : DEFINITION.check(
                "dextrose equivalent",
                "mean chain of DE " + Math.round(cell.row()),
                "units",
                cell.figure(),
                DextroseEquivalent.meanChain(cell.row()),
                cell.lastDigit()));
  }
}
