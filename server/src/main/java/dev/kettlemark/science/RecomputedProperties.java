package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Heat, density, foam and inversion, computed apart from this code from the stated equations. */
final class RecomputedProperties {

  private static final Check.Source CHOI_OKOS =
      Check.Source.recomputed("Choi and Okos 1986, computed apart from the polynomials");
  private static final Check.Source SYRUP_HEAT =
      Check.Source.recomputed("Janovskii 1928 and Choi and Okos 1986, computed apart");
  private static final Check.Source PLATO =
      Check.Source.recomputed("fit to Plato's densities, computed apart");
  private static final Check.Source DEFINITION =
      Check.Source.recomputed("definition, computed apart");
  private static final Check.Source STOICHIOMETRY =
      Check.Source.recomputed("stoichiometry, computed apart");

  private RecomputedProperties() {}

  static List<Check> all() {
    return Stream.of(groups(), syrupHeat(), density(), foam(), inversion(), gelatine())
        .flatMap(checks -> checks)
        .toList();
  }

  private static Stream<Check> groups() {
    return Stream.of(
            "WATER | 4.177 | 4.222 | 995.7",
            "PROTEIN | 2.032 | 2.116 | 1319.5",
            "FAT | 2.012 | 2.084 | 917.2",
            "CARBOHYDRATE | 1.586 | 1.686 | 1592.9",
            "FIBRE | 1.881 | 1.982 | 1304.2",
            "ASH | 1.129 | 1.245 | 2418.2")
        .map(line -> line.split(" \\| ", -1))
        .flatMap(line -> {
          ChoiOkos group = ChoiOkos.valueOf(line[0]);
          return Stream.of(
              heat(group, 20, Double.parseDouble(line[1])),
              heat(group, 100, Double.parseDouble(line[2])),
              CHOI_OKOS.check(
                  "density without air",
                  word(group) + " at 20 °C",
                  "kg/m³",
                  Double.parseDouble(line[3]),
                  group.density(20),
                  0.1));
        });
  }

  private static Check heat(ChoiOkos group, double celsius, double figure) {
    return CHOI_OKOS.check(
        "specific heat",
        word(group) + " at " + celsius + " °C",
        "kJ/(kg·K)",
        figure,
        group.specificHeat(celsius),
        0.001);
  }

  private static String word(ChoiOkos group) {
    return group.name().toLowerCase(Locale.ROOT);
  }

  private static Stream<Check> syrupHeat() {
    return Stream.of(
            new double[] {20, 20, 3.674, 3.658},
            new double[] {60, 20, 2.649, 2.622},
            new double[] {80, 100, 2.405, 2.193},
            new double[] {90, 120, 2.258, 1.953},
            new double[] {97, 150, 2.229, 1.787})
        .flatMap(line -> Stream.of(
            syrupHeat(HeatContent.JANOVSKII, line[0], line[1], line[2]),
            syrupHeat(HeatContent.CHOI_OKOS, line[0], line[1], line[3])));
  }

  private static Check syrupHeat(HeatContent model, double solids, double celsius, double figure) {
    Composition syrup = ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 100 - solids);
    String author = model == HeatContent.JANOVSKII ? "Janovskii" : "Choi and Okos";
    return SYRUP_HEAT.check(
        "specific heat",
        "sucrose %.0f %% at %.0f °C, %s".formatted(solids, celsius, author),
        "kJ/(kg·K)",
        figure,
        model.kilojoulesPerKilogramKelvin(syrup, celsius),
        0.001);
  }

  private static Stream<Check> density() {
    return FigureGrid.of("""
            %   | kg/m³
            10  | 1038.11
            20  | 1081.00
            30  | 1127.07
            40  | 1176.51
            50  | 1229.52
            60  | 1286.26
            65  | 1316.1
            70  | 1346.90
            75  | 1378.7
            80  | 1411.54
            85  | 1445.39
            90  | 1480.26
            97  | 1531
            100 | 1553
            """)
        .cells()
        .map(cell -> PLATO.check(
            "density without air",
            "sucrose " + cell.row() + " % at 20 °C",
            "kg/m³",
            cell.figure(),
            FoodDensity.ofSyrup(Ratio.ofPercent(cell.row()), Temperature.ofCelsius(20))
                .map(Density::kilogramsPerCubicMetre),
            cell.lastDigit()));
  }

  private static Stream<Check> foam() {
    return Stream.of(
            new double[] {1.36, 0.34, 300, 0.750, 0.1},
            new double[] {1.40, 0.90, 55.6, 0.357, 0.1},
            new double[] {1.035, 0.13, 696, 0.874, 1},
            new double[] {1.30, 0.45, 188.9, 0.654, 0.1})
        .flatMap(line -> {
          Density mass = Density.ofGramsPerMillilitre(line[0]);
          Density whipped = Density.ofGramsPerMillilitre(line[1]);
          String subject = "from " + line[0] + " to " + line[1] + " g/mL";
          return Stream.of(
              DEFINITION.check(
                  "overrun",
                  subject,
                  "%",
                  line[2],
                  Foam.overrun(mass, whipped).map(Ratio::percent),
                  line[4]),
              DEFINITION.check(
                  "share of gas",
                  subject,
                  "",
                  line[3],
                  Foam.gasFraction(mass, whipped).map(Ratio::fraction),
                  0.001));
        });
  }

  private static Stream<Check> inversion() {
    Portion syrup = new Portion(
        Mass.ofGrams(130),
        Composition.ofMasses(
            Map.of(Component.SUCROSE, Mass.ofGrams(100), Component.WATER, Mass.ofGrams(30))));
    Outcome<Portion> inverted = Inversion.of(syrup, Ratio.ONE);
    return Stream.of(
        STOICHIOMETRY.check(
            "inversion",
            "invert of 100 g sucrose",
            "g",
            105.26,
            inverted.map(all -> all.massOf(Component.GLUCOSE)
                .plus(all.massOf(Component.FRUCTOSE))
                .grams()),
            0.01),
        STOICHIOMETRY.check(
            "inversion",
            "water taken up by 100 g sucrose",
            "g",
            5.263,
            inverted.map(all -> 30 - all.massOf(Component.WATER).grams()),
            0.001));
  }

  private static Stream<Check> gelatine() {
    Mass one = Mass.ofGrams(1);
    return Stream.of(
        DEFINITION.check(
            "gelatine by bloom",
            "factor 250 to 200, three decimals",
            "",
            1.118,
            GelatineStrength.byRootRule(one, new Bloom(250), new Bloom(200)).grams(),
            0.001),
        DEFINITION.check(
            "gelatine by bloom",
            "factor 200 to 250, three decimals",
            "",
            0.894,
            GelatineStrength.byRootRule(one, new Bloom(200), new Bloom(250)).grams(),
            0.001),
        DEFINITION.check(
            "gelatine by bloom",
            "factor 250 to 200 by the linear rule",
            "",
            1.25,
            GelatineStrength.byLinearRule(one, new Bloom(250), new Bloom(200)).grams(),
            0.01));
  }
}
