package dev.kettlemark.science;

import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Hot syrup poured into a meringue base, computed apart from this code: 600 g of syrup into 150 g of base at 22 °C, of which
 * 44.52 g are solids.
 *
 * <p>The figures take all solids for sugar and count as lost a twentieth of what the syrup holds above 0 °C.
 */
final class RecomputedPours {

  private static final Check.Source APART =
      Check.Source.recomputed("heat balance of a meringue, computed apart");

  private static final double BASE_CELSIUS = 22;
  private static final Portion BASE = new Portion(
      Mass.ofGrams(150), ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 100 - 44.52 / 1.5));
  private static final Vessel BOWL =
      Vessel.ofSteel(Mass.ofKilograms(1), Temperature.ofCelsius(BASE_CELSIUS));
  private static final double LOST = 0.05;

  private RecomputedPours() {}

  static List<Check> all() {
    return Stream.of(
            new Pour(118, 87.8)
                .checks(
                    new double[] {91.3, 76.4, 73.2}, new double[] {89.2, 73.9, 70.8}, 76.2, 107.2),
            new Pour(127, 91.7)
                .checks(
                    new double[] {97.2, 80.7, 77.4}, new double[] {94.3, 77.5, 74.2}, 79.3, 109.0),
            new Pour(150, 97.1)
                .checks(
                    new double[] {112.5, 92.9, 89.0},
                    new double[] {108.2, 87.4, 83.7},
                    83.6,
                    112.5))
        .flatMap(checks -> checks)
        .toList();
  }

  /** A syrup of the given solids, poured at the given temperature. */
  private record Pour(double celsius, double solids) {

    Stream<Check> checks(
        double[] janovskii, double[] choiOkos, double mixedSolids, double boiling) {
      Stream<Check> temperatures = Stream.of(
              temperatures(HeatContent.JANOVSKII, "Janovskii", janovskii),
              temperatures(HeatContent.CHOI_OKOS, "Choi and Okos", choiOkos))
          .flatMap(checks -> checks);
      Stream<Check> mixture = Stream.of(
          APART.check(
              "heat balance",
              subject("solids"),
              "%",
              mixedSolids,
              charge().composition().solids().percent(),
              0.1),
          APART.check(
              "heat balance",
              subject("boiling point"),
              "°C",
              boiling,
              SyrupBoiling.boilingPoint(charge().composition(), Pressure.STANDARD_ATMOSPHERE)
                  .map(Temperature::celsius),
              0.1));
      return Stream.concat(temperatures, mixture);
    }

    private Stream<Check> temperatures(HeatContent model, String author, double[] figures) {
      return Stream.of(
          check(model, author + ", no bowl", figures[0], Optional.empty(), Ratio.ZERO),
          check(model, author + ", steel bowl", figures[1], Optional.of(BOWL), Ratio.ZERO),
          check(model, author + ", bowl and loss", figures[2], Optional.of(BOWL), loss(model)));
    }

    private Check check(
        HeatContent model, String how, double figure, Optional<Vessel> vessel, Ratio loss) {
      Outcome<Double> computed = HeatBalance.settle(
              model, charge(), held(), vessel, loss, Pressure.STANDARD_ATMOSPHERE)
          .map(HeatBalance.Settled::celsius)
          .map(Outcome::known)
          .orElseGet(() -> Outcome.unknown(Reason.NO_SOLUTION, "nothing balances the heat"));
      return APART.check("heat balance", subject(how), "°C", figure, computed, 0.1);
    }

    /** The model counts a loss from the coldest parcel up, which is the base; this share of that is as much heat. */
    private Ratio loss(HeatContent model) {
      double fromZero = HeatBalance.contents(model, syrup(), celsius);
      double fromBase = fromZero - HeatBalance.contents(model, syrup(), BASE_CELSIUS);
      return Ratio.ofFraction(LOST * fromZero / fromBase);
    }

    private List<HeatBalance.Held> held() {
      return List.of(
          new HeatBalance.Held(syrup(), celsius), new HeatBalance.Held(BASE, BASE_CELSIUS));
    }

    private Portion syrup() {
      return new Portion(
          Mass.ofGrams(600), ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 100 - solids));
    }

    private Portion charge() {
      return new Portion(Mass.ofGrams(750), Composition.mix(List.of(syrup(), BASE)));
    }

    private String subject(String what) {
      return "meringue, syrup at %.0f °C, %s".formatted(celsius, what);
    }
  }
}
