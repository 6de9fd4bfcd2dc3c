package dev.kettlemark.science;

import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Water activity in storage by six equations, computed apart from this code. */
final class RecomputedStorage {

  private static final Check.Source APART =
      Check.Source.recomputed("computed apart from the equations as printed");

  private static final Temperature ROOM = Temperature.ofCelsius(25);

  /** The study splits the sugars of honey otherwise: a hundredth fewer molecules to the gram. */
  private static final double HONEY_TOLERANCE = 0.003;

  /** The lines of the table below, in order. */
  private static final List<Map.Entry<String, Composition>> CASES = List.of(
      Map.entry("sucrose, 50 %", ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 50)),
      Map.entry("sucrose, 60 %", ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 40)),
      Map.entry("sucrose, 67.3 %", ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 32.7)),
      Map.entry("glucose, 51.2 %", ReferenceBlends.withWater(ReferenceBlends.GLUCOSE, 48.8)),
      Map.entry("fructose, 80.4 %", ReferenceBlends.withWater(ReferenceBlends.FRUCTOSE, 19.6)),
      Map.entry("honey, 17.1 % water", ReferenceBlends.withWater(ReferenceBlends.HONEY, 17.1)),
      Map.entry("honey, 20 % water", ReferenceBlends.withWater(ReferenceBlends.HONEY, 20)),
      Map.entry("invert, 77 %", ReferenceBlends.withWater(ReferenceBlends.INVERT, 23)),
      Map.entry(
          "60:40 sucrose:42 DE, 10 % water",
          ReferenceBlends.withWater(ReferenceBlends.HARD_CANDY, 10)),
      Map.entry(
          "60:40 sucrose:42 DE, 3 % water",
          ReferenceBlends.withWater(ReferenceBlends.HARD_CANDY, 3)));

  private RecomputedStorage() {}

  static List<Check> all() {
    return Stream.of(opinions(), stored(), Stream.of(softening()))
        .flatMap(checks -> checks)
        .toList();
  }

  /** Above this air humidity a sucrose glass softens at 25 °C. */
  private static Check softening() {
    return APART.check(
        "water activity",
        "sucrose that softens at 25 °C, 4.7 % water",
        "",
        0.22,
        WaterActivity.of(ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 4.7), ROOM)
            .map(Ratio::fraction),
        0.01);
  }

  /** What each equation says of each case, also below the limit where the program lets it speak. */
  private static Stream<Check> opinions() {
    return FigureGrid.of("""
            case | mixing rule | Norrish | Ross  | Raoult | Money and Born | Grover
            0    | 0.934       | 0.935   | 0.935 | 0.950  | 0.927          | 0.945
            1    | 0.895       | 0.895   | 0.895 | 0.927  | 0.894          | 0.900
            2    | 0.849       | 0.848   | 0.848 | 0.902  | 0.860          | 0.853
            3    | 0.889       | 0.887   | 0.887 | 0.905  | 0.864          | 0.912
            4    | 0.624       | 0.586   | 0.586 | 0.709  | 0.619          | 0.635
            5    | 0.574       | 0.537   | 0.560 | 0.680  | 0.587          | 0.593
            6    | 0.635       | 0.601   | 0.626 | 0.721  | 0.633          | 0.646
            7    | 0.682       | 0.650   | 0.669 | 0.749  | 0.666          | 0.690
            8    | 0.429       | -       | -     | 0.706  | 0.616          | -
            9    | 0.151       | -       | -     | 0.401  | 0.308          | -
            """).cells().map(cell -> {
      var one = CASES.get((int) cell.row());
      return APART.check(
          "water activity by " + cell.column(),
          one.getKey(),
          "",
          cell.figure(),
          by(cell.column(), one.getValue()),
          one.getKey().startsWith("honey") ? HONEY_TOLERANCE : cell.lastDigit());
    });
  }

  private static double by(String equation, Composition composition) {
    return switch (equation) {
      case "Norrish" -> ActivityOpinions.norrishActivity(composition);
      case "Ross" -> ActivityOpinions.rossActivity(composition);
      case "Raoult" -> ActivityOpinions.idealActivity(composition);
      case "Money and Born" -> ActivityOpinions.moneyBornActivity(composition);
      case "Grover" -> ActivityOpinions.groverActivity(composition);
      default -> WaterActivity.of(composition, ROOM).map(Ratio::fraction).orElse(Double.NaN);
    };
  }

  private static Stream<Check> stored() {
    return FigureGrid.of("""
            % water | sucrose | invert | 42 DE
            20      | 0.693   | 0.631  | 0.719
            15      | 0.580   | 0.518  | 0.605
            10      | 0.420   | 0.366  | 0.442
            7       | 0.305   | 0.265  | 0.322
            5       | 0.230   | 0.205  | 0.241
            """)
        .cells()
        .map(cell -> APART.check(
            "water activity",
            cell.column() + ", " + cell.row() + " % water",
            "",
            cell.figure(),
            WaterActivity.of(
                    ReferenceBlends.withWater(ReferenceBlends.named(cell.column()), cell.row()),
                    ROOM)
                .map(Ratio::fraction),
            cell.lastDigit()));
  }
}
