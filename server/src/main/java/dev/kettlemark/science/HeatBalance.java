package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Gives the temperature of parcels poured together, such as hot syrup streamed into foam.
 *
 * <p>Equation: Σ mᵢ·hᵢ(tᵢ) + C·t_v − λ·Σ mᵢ·(hᵢ(tᵢ) − hᵢ(t_c)) = (Σ mᵢ − s)·h(T) + C·T + s·(h_w(T) + L(T)).
 *
 * <p>Symbols: mᵢ mass in kg; hᵢ heat content in kJ/kg by {@link HeatContent}; C heat that warms the vessel in kJ/K; t_v
 * its temperature before; λ lost share of the heat that the parcels hold above the coldest of them, t_c; s steam in kg,
 * zero unless T would pass the boiling point of the mixture; T the common temperature in °C; h_w heat content of water; L
 * by {@link LatentHeat}.
 *
 * <p>Shape: one parcel or more, in any order; a vessel or none.
 *
 * <p>Range: every temperature from −40 to 180 °C; outside it, or when nothing weighs anything, the answer is unknown.
 *
 * <p>Expected error: the band itself; foam and thin bowls lose more than any model says. Heat taken up by melting fat or
 * dissolving crystals is left out, so real mixtures of that kind are cooler.
 *
 * <p>Source: first law of thermodynamics, with the sources of the classes above.
 */
public final class HeatBalance {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "temperature after pouring together",
      "Σ m·h(t) + C·tv − loss = (Σ m − s)·h(T) + C·T + s·(hw(T) + L(T))",
      "heat balance; Janovskii and Archangelskii 1928 and Choi and Okos 1986 as band",
      Confidence.MODEL);

  private static final double COLDEST = -40;
  private static final double HOTTEST = 180;

  /** No steam leaves with less heat than this in kJ/kg anywhere in the range, which bounds the search for its mass. */
  private static final double LEAST_LATENT_HEAT = 2000;

  private static final Composition WATER = Composition.of(Component.WATER);

  private HeatBalance() {}

  /** Parcels closer than this in kelvin hold too little heat to tell a loss from a reading error; an own estimate. */
  private static final double LEAST_FALL = 20;

  /** One possible result: the temperature in °C and the steam in kg. */
  record Settled(double celsius, double steam) {}

  /**
   * Returns what parcels become together.
   *
   * @param parcels at least one, in any order
   * @param vessel what they are poured into, if it counts
   * @param lossShare share of the parcels' heat above the coldest of them that is lost, 0 to 100 %
   * @param pressure of the air, for the boiling point
   */
  public static Outcome<PouredTogether> of(
      List<Parcel> parcels, Optional<Vessel> vessel, Ratio lossShare, Pressure pressure) {
    List<Portion> portions = parcels.stream().map(Parcel::portion).toList();
    double mass =
        portions.stream().map(Portion::mass).mapToDouble(Mass::kilograms).sum();
    if (!(mass > 0)) {
      return Outcome.unknown(Reason.CONTRADICTION, "the parcels weigh nothing");
    }
    if (!lossShare.isShare()) {
      return Outcome.unknown(
          Reason.CONTRADICTION, "a loss of %.0f %% is no share of the heat", lossShare.percent());
    }
    if (!allInRange(parcels, vessel)) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE, "a temperature lies outside −40 to 180 °C");
    }
    Portion charge = new Portion(Mass.ofKilograms(mass), Composition.mix(portions));
    Mixture mixture =
        new Mixture(charge, pressure, SyrupBoiling.boilingPoint(charge.composition(), pressure));
    List<Held> cold = coldEnds(parcels);
    List<Held> hot = hotEnds(parcels);
    List<Optional<Settled>> corners = Stream.of(HeatContent.values())
        .flatMap(model -> Stream.of(
            settle(model, mixture, cold, Optional.empty(), Ratio.ZERO),
            settle(model, mixture, hot, Optional.empty(), Ratio.ZERO),
            settle(model, mixture, cold, vessel, lossShare),
            settle(model, mixture, hot, vessel, lossShare)))
        .toList();
    return corners.stream().allMatch(Optional::isPresent)
        ? Outcome.known(
            spanning(mixture, corners.stream().flatMap(Optional::stream).toList()))
        : Outcome.unknown(
            Reason.NO_SOLUTION, "no temperature from −40 to 180 °C balances the heat");
  }

  /**
   * What all parcels make together.
   *
   * @param boils at what temperature the whole charge boils; unknown where the model ends
   */
  private record Mixture(Portion charge, Pressure pressure, Outcome<Temperature> boils) {}

  /** What goes in at one end of its band. */
  record Held(Portion portion, double celsius) {}

  /**
   * Returns the share of the heat that bowl, whisk and air have taken, by what a probe read afterwards.
   *
   * <p>Equation: λ = (Σ mᵢ·hᵢ(tᵢ) − Σ mᵢ·h(T)) / Σ mᵢ·(hᵢ(tᵢ) − hᵢ(t_c)), the balance above without a vessel and without
   * steam, solved for the loss. The result is the mean over both models of heat content, each parcel in the middle of its
   * band; below zero where the mixture was hotter than its parcels can make it.
   *
   * @param parcels at least two, one of them much hotter than another
   * @param measured the temperature of the mixture
   */
  public static Outcome<Ratio> lostShare(List<Parcel> parcels, Temperature measured) {
    if (!allInRange(parcels, Optional.empty()) || !HeatContent.isInRange(measured.celsius())) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE, "a temperature lies outside −40 to 180 °C");
    }
    List<Held> held = parcels.stream()
        .map(parcel -> new Held(parcel.portion(), middleCelsius(parcel)))
        .toList();
    double coldest = held.stream().mapToDouble(Held::celsius).min().orElse(0);
    double hottest = held.stream().mapToDouble(Held::celsius).max().orElse(0);
    if (hottest - coldest < LEAST_FALL) {
      return Outcome.unknown(
          Reason.NOT_MODELLED, "what was put together was nearly of one temperature");
    }
    return Outcome.known(Ratio.ofFraction(Stream.of(HeatContent.values())
        .mapToDouble(model -> lostShare(model, held, coldest, measured.celsius()))
        .average()
        .orElse(0)));
  }

  private static double lostShare(
      HeatContent model, List<Held> held, double coldest, double measured) {
    List<Portion> portions = held.stream().map(Held::portion).toList();
    double mass =
        portions.stream().map(Portion::mass).mapToDouble(Mass::kilograms).sum();
    double left = mass * model.kilojoulesPerKilogram(Composition.mix(portions), measured);
    double before = 0;
    double most = 0;
    for (Held one : held) {
      double content = contents(model, one.portion(), one.celsius());
      before += content;
      most += content - contents(model, one.portion(), coldest);
    }
    return (before - left) / most;
  }

  private static double middleCelsius(Parcel parcel) {
    return (parcel.temperature().low().celsius() + parcel.temperature().high().celsius()) / 2;
  }

  /** The balance for one model and one temperature per parcel; nothing if no temperature in range balances it. */
  static Optional<Settled> settle(
      HeatContent model,
      Portion charge,
      List<Held> held,
      Optional<Vessel> vessel,
      Ratio loss,
      Pressure pressure) {
    return settle(
        model,
        new Mixture(charge, pressure, SyrupBoiling.boilingPoint(charge.composition(), pressure)),
        held,
        vessel,
        loss);
  }

  private static Optional<Settled> settle(
      HeatContent model, Mixture mixture, List<Held> held, Optional<Vessel> vessel, Ratio loss) {
    Portion charge = mixture.charge();
    double heat = heatIn(model, held, vessel, loss);
    double perKelvin = vessel.map(Vessel::kilojoulesPerKelvin).orElse(0.0);
    OptionalDouble dry =
        Root.between(COLDEST, HOTTEST, t -> contents(model, charge, t) + perKelvin * t - heat);
    if (dry.isEmpty()) {
      return Optional.empty();
    }
    double celsius = dry.getAsDouble();
    double boiling = mixture.boils().map(Temperature::celsius).orElse(Double.POSITIVE_INFINITY);
    return celsius <= boiling
        ? Optional.of(new Settled(celsius, 0))
        : boilOff(model, charge, perKelvin, heat, celsius, mixture.pressure());
  }

  private static double heatIn(
      HeatContent model, List<Held> held, Optional<Vessel> vessel, Ratio loss) {
    double coldest = held.stream().mapToDouble(Held::celsius).min().orElseThrow();
    double heat =
        vessel.map(v -> v.kilojoulesPerKelvin() * v.temperature().celsius()).orElse(0.0);
    for (Held one : held) {
      double content = contents(model, one.portion(), one.celsius());
      heat += content - loss.fraction() * (content - contents(model, one.portion(), coldest));
    }
    return heat;
  }

  /** Lets steam leave until the rest just boils, which is a little hotter than the charge would. */
  private static Optional<Settled> boilOff(
      HeatContent model,
      Portion charge,
      double perKelvin,
      double heat,
      double dryCelsius,
      Pressure pressure) {
    double water = charge.massOf(Component.WATER).kilograms();
    double start = boilingCelsius(charge, pressure, dryCelsius);
    double excess = heat - contents(model, charge, start) - perKelvin * start;
    double most = Math.min(excess / LEAST_LATENT_HEAT, water);
    OptionalDouble steam = Root.between(0, most, s -> {
      Portion rest = without(charge, s);
      double t = boilingCelsius(rest, pressure, dryCelsius);
      return contents(model, rest, t) + perKelvin * t + s * steamContent(model, t) - heat;
    });
    return steam.isEmpty()
        ? Optional.empty()
        : Optional.of(new Settled(
            boilingCelsius(without(charge, steam.getAsDouble()), pressure, dryCelsius),
            steam.getAsDouble()));
  }

  static double contents(HeatContent model, Portion portion, double celsius) {
    return portion.mass().kilograms() * model.kilojoulesPerKilogram(portion.composition(), celsius);
  }

  static double steamContent(HeatContent model, double celsius) {
    return model.kilojoulesPerKilogram(WATER, celsius) + LatentHeat.kilojoulesPerKilogram(celsius);
  }

  /** Returns the portion after the given kilograms of its water have left. */
  static Portion without(Portion charge, double steam) {
    Mass rest = charge.mass().minus(Mass.ofKilograms(steam));
    double water = charge.massOf(Component.WATER).kilograms() - steam;
    double share = Math.max(0, Math.min(1, water / rest.kilograms()));
    return new Portion(rest, charge.composition().withWaterFraction(Ratio.ofFraction(share)));
  }

  private static double boilingCelsius(Portion portion, Pressure pressure, double otherwise) {
    return SyrupBoiling.boilingPoint(portion.composition(), pressure)
        .map(Temperature::celsius)
        .orElse(otherwise);
  }

  private static PouredTogether spanning(Mixture mixture, List<Settled> corners) {
    var celsius = corners.stream().mapToDouble(Settled::celsius).summaryStatistics();
    var steam = corners.stream().mapToDouble(Settled::steam).summaryStatistics();
    return new PouredTogether(
        mixture.charge(),
        new Band<>(
            Temperature.ofCelsius(celsius.getMin()), Temperature.ofCelsius(celsius.getMax())),
        new Band<>(Mass.ofKilograms(steam.getMin()), Mass.ofKilograms(steam.getMax())),
        mixture.boils());
  }

  private static List<Held> coldEnds(List<Parcel> parcels) {
    return parcels.stream()
        .map(parcel -> new Held(parcel.portion(), parcel.temperature().low().celsius()))
        .toList();
  }

  private static List<Held> hotEnds(List<Parcel> parcels) {
    return parcels.stream()
        .map(parcel -> new Held(parcel.portion(), parcel.temperature().high().celsius()))
        .toList();
  }

  private static boolean allInRange(List<Parcel> parcels, Optional<Vessel> vessel) {
    return Stream.concat(
            parcels.stream()
                .map(Parcel::temperature)
                .flatMap(band -> Stream.of(band.low(), band.high())),
            vessel.map(Vessel::temperature).stream())
        .allMatch(temperature -> HeatContent.isInRange(temperature.celsius()));
  }
}
