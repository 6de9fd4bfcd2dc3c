package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Boiling and water left of syrups, computed apart from this code from the stated equations. */
final class RecomputedSyrups {

  private static final Check.Source SUCROSE = Check.Source.recomputed(
      "Starzak and Peacock 1997 with IAPWS-IF97, computed apart from the stated equations");
  private static final Check.Source MIXED = Check.Source.recomputed(
      "Starzak and Peacock 1997 with Stokes and Robinson 1966, computed apart");
  private static final Check.Source CLOSED_FORM =
      Check.Source.recomputed("closed form of the boiling point, computed apart");

  /**
   * The study rounds the split of its glucose syrups otherwise: 42 DE boils 0.02 °C lower there, and of agave it does not
   * say how long the longer saccharides are.
   */
  private static final Map<String, Double> OTHER_SPLIT =
      Map.of("42 DE", 0.06, "62 DE", 0.06, "agave", 0.12);

  private RecomputedSyrups() {}

  static List<Check> all() {
    return Stream.of(
            activity(),
            sucrose(),
            blends(),
            waterLeft(),
            stages(),
            stageEnds(),
            altitude(),
            batch())
        .flatMap(checks -> checks)
        .toList();
  }

  private static Stream<Check> activity() {
    return Stream.of(
        activity(50, 25, 0.9341),
        activity(80, 25, 0.6928),
        activity(90, 25, 0.4202),
        activity(90, 100, 0.4627),
        activity(97, 150, 0.2164));
  }

  private static Stream<Check> sucrose() {
    Stream<Check> equation = FigureGrid.of("""
            %    | °C
            10   | 100.14
            30   | 100.68
            50   | 101.80
            60   | 102.91
            70   | 104.96
            75   | 106.72
            80   | 109.44
            85   | 113.99
            90   | 122.41
            90.8 | 124.37
            92   | 127.79
            94   | 134.98
            95   | 139.38
            96   | 144.27
            97   | 149.41
            98.2 | 155.0
            99.5 | 165.6
            """)
        .cells()
        .map(cell -> boiling(SUCROSE, "sucrose", 100 - cell.row(), 0, cell, cell.lastDigit()));
    Stream<Check> closedForm = FigureGrid.of("""
            %  | °C
            50 | 1.83
            80 | 9.45
            90 | 22.36
            95 | 39.7
            97 | 48.9
            """)
        .cells()
        .map(cell -> CLOSED_FORM.check(
            "boiling point in closed form",
            "sucrose " + cell.row() + " %, above water",
            "°C",
            cell.figure(),
            BoilingElevation.of(Ratio.ofPercent(cell.row()), Pressure.STANDARD_ATMOSPHERE)
                .map(TemperatureDifference::celsius),
            cell.lastDigit()));
    return Stream.concat(equation, closedForm);
  }

  private static Stream<Check> blends() {
    return FigureGrid.of("""
            % water | 85:15 sucrose:glucose | invert | 42 DE  | 62 DE
            50      | 102.00                | 102.97 | 101.31 | 101.99
            30      | 105.31                | 106.92 | 104.08 | 105.30
            20      | 109.85                | 111.94 | 108.41 | 109.84
            15      | 114.47                | 116.99 | 112.86 | 114.46
            10      | 123.00                | 126.16 | 121.03 | 122.98
            5       | 139.99                | 143.04 | 137.91 | 139.97
            3       | 149.82                | 151.71 | 148.41 | 149.81
            """)
        .cells()
        .map(cell -> boiling(MIXED, cell.column(), cell.row(), 0, cell, tolerance(cell)));
  }

  private static Stream<Check> waterLeft() {
    return FigureGrid.of("""
            °C  | sucrose | 85:15 sucrose:glucose | 60:40 sucrose:42 DE | invert | agave | 42 DE | sorbitol
            110 | 19.21   | 19.79 | 18.69 | 22.92 | 22.39 | 17.89 | 25.65
            115 | 14.20   | 14.58 | 13.86 | 16.65 | 16.30 | 13.34 | 19.05
            118 | 12.21   | 12.52 | 11.92 | 14.27 | 13.97 | 11.49 | 16.45
            121 | 10.63   | 10.91 | 10.39 | 12.43 | 12.16 | 10.01 | 14.39
            127 | 8.26    | 8.47  | 8.07  | 9.67  | 9.46  | 7.77  | 11.26
            143 | 4.25    | 4.37  | 4.15  | 5.01  | 4.90  | 3.99  | 5.89
            150 | 2.88    | 2.96  | 2.81  | 3.41  | 3.33  | 2.71  | 4.02
            154 | 2.04    | 2.10  | 1.99  | 2.42  | 2.36  | 1.92  | 2.86
            """)
        .cells()
        .map(cell -> MIXED.check(
            "boiling of syrup",
            cell.column() + " cooked to " + cell.row() + " °C, water",
            "%",
            cell.figure(),
            waterLeft(cell.column(), cell.row(), 0),
            cell.column().equals("agave") ? tolerance(cell) : cell.lastDigit()));
  }

  private static Stream<Check> stages() {
    return FigureGrid.of("""
            °C    | solids
            110.5 | 81.4
            113.5 | 84.6
            119   | 88.4
            125.5 | 91.2
            137.5 | 94.6
            150   | 97.1
            """)
        .cells()
        .map(cell -> SUCROSE.check(
            "boiling of syrup",
            "sucrose cooked to " + cell.row() + " °C, solids",
            "%",
            cell.figure(),
            waterLeft("sucrose", cell.row(), 0).map(water -> 100 - water),
            cell.lastDigit()));
  }

  /** Water at both ends of the named stages. */
  private static Stream<Check> stageEnds() {
    return FigureGrid.of("""
            °C  | water
            104 | 34
            106 | 27
            110 | 19
            112 | 17
            116 | 13.5
            118 | 12
            120 | 11
            121 | 10.6
            130 | 7.3
            132 | 6.8
            143 | 4.3
            149 | 3.1
            154 | 2.0
            """)
        .cells()
        .map(cell -> SUCROSE.check(
            "boiling of syrup",
            "sucrose at the end of a stage, " + cell.row() + " °C, water",
            "%",
            cell.figure(),
            waterLeft("sucrose", cell.row(), 0),
            cell.lastDigit()));
  }

  private static Stream<Check> altitude() {
    Stream<Check> boiling = FigureGrid.of("""
            m    | 15    | 10    | 5     | 3
            0    | 114.0 | 122.4 | 139.4 | 149.4
            500  | 112.2 | 120.6 | 137.4 | 147.3
            1000 | 110.4 | 118.7 | 135.4 | 145.2
            1500 | 108.7 | 116.9 | 133.4 | 143.1
            2000 | 106.9 | 115.0 | 131.4 | 141.0
            3000 | 103.3 | 111.3 | 127.4 | 136.8
            """)
        .cells()
        .map(cell -> boiling(
            SUCROSE,
            "sucrose",
            Double.parseDouble(cell.column()),
            cell.row(),
            cell,
            cell.lastDigit()));
    Stream<Check> copied = FigureGrid.of("""
            °C  | there
            118 | 112.2
            127 | 120.9
            150 | 143.2
            """)
        .cells()
        .map(cell -> SUCROSE.check(
            "boiling of syrup",
            "at 1609 m, for " + cell.row() + " °C at sea level",
            "°C",
            cell.figure(),
            pressureAt(1609)
                .flatMap(local -> SyrupBoiling.sameSolids(
                    ReferenceBlends.SUCROSE,
                    Temperature.ofCelsius(cell.row()),
                    Pressure.STANDARD_ATMOSPHERE,
                    local))
                .map(Temperature::celsius),
            cell.lastDigit()));
    return Stream.of(
            boiling,
            copied,
            Stream.of(SUCROSE.check(
                "boiling of syrup",
                "sucrose cooked to 150 °C at 1609 m, water",
                "%",
                1.24,
                waterLeft("sucrose", 150, 1609),
                0.01)))
        .flatMap(checks -> checks);
  }

  /** A kilogram of sucrose in 300 g of water, cooked to 127 °C. */
  private static Stream<Check> batch() {
    Portion syrup = new Portion(
        Mass.ofGrams(1300),
        Composition.ofMasses(
            Map.of(Component.SUCROSE, Mass.ofGrams(1000), Component.WATER, Mass.ofGrams(300))));
    Outcome<CookOff> cooked =
        SyrupBoiling.cook(syrup, Temperature.ofCelsius(127), Pressure.STANDARD_ATMOSPHERE);
    String subject = "1000 g sucrose and 300 g water to 127 °C, ";
    return Stream.of(
        SUCROSE.check(
            "boiling of syrup",
            subject + "mass",
            "g",
            1090,
            cooked.map(off -> off.cooked().mass().grams()),
            1),
        SUCROSE.check(
            "boiling of syrup",
            subject + "steam",
            "g",
            210,
            cooked.map(off -> off.water().grams()),
            1),
        SUCROSE.check(
            "boiling of syrup",
            subject + "water",
            "%",
            8.26,
            cooked.map(off -> off.cooked().composition().water().percent()),
            0.01));
  }

  private static Check activity(double solids, double celsius, double figure) {
    return SUCROSE.check(
        "water activity of sucrose syrup",
        "sucrose " + solids + " % at " + celsius + " °C",
        "",
        figure,
        SucroseActivity.of(Ratio.ofPercent(solids), Temperature.ofCelsius(celsius))
            .map(Ratio::fraction),
        1e-4);
  }

  private static Check boiling(
      Check.Source source,
      String blend,
      double water,
      double metres,
      FigureGrid.Cell cell,
      double tolerance) {
    Outcome<Double> computed = pressureAt(metres)
        .flatMap(pressure -> SyrupBoiling.boilingPoint(
            ReferenceBlends.withWater(ReferenceBlends.named(blend), water), pressure))
        .map(Temperature::celsius);
    String subject = "%s, %.1f %% solids at %.0f m".formatted(blend, 100 - water, metres);
    return source.check("boiling of syrup", subject, "°C", cell.figure(), computed, tolerance);
  }

  private static Outcome<Double> waterLeft(String blend, double celsius, double metres) {
    return pressureAt(metres)
        .flatMap(pressure -> SyrupBoiling.waterLeft(
            ReferenceBlends.named(blend), Temperature.ofCelsius(celsius), pressure))
        .map(Ratio::percent);
  }

  private static Outcome<Pressure> pressureAt(double metres) {
    return StandardAtmosphere.pressureAt(Length.ofMetres(metres));
  }

  private static double tolerance(FigureGrid.Cell cell) {
    return OTHER_SPLIT.getOrDefault(cell.column(), cell.lastDigit());
  }
}
