package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import org.hipparchus.analysis.UnivariateFunction;

/**
 * Relates the temperature of a boiling syrup to the water left in it, both ways.
 *
 * <p>Equation: a = p / p_sat(T); W = W_sucrose(a, T)·Σ sᵢ·rᵢ(a); water fraction = W / (1 + W).
 *
 * <p>Symbols: a water activity; p air pressure in Pa; p_sat by {@link SaturationLine}; T temperature in K; W kg of water
 * per kg of dry solids; W_sucrose by {@link SucroseActivity}; rᵢ by {@link WaterHolding}.
 *
 * <p>Shape: any composition with solids that dissolve; ethanol counts as boiled away before the syrup cooks.
 *
 * <p>Range: from the boiling point of water to 99.5 % equivalent sucrose solids, below 90 °C to 96 %; outside it the
 * answer is unknown, because such a syrup caramelises or the equation turns back on itself.
 *
 * <p>Expected error: ±1 percent point of water for sugar syrups to 130 °C, up to 1.4 too moist for milk caramels, ±0.7 at 150 °C; pure sucrose against trade stages ±2; real kettles add a thermometer's ±1 °C.
 *
 * <p>Source: the three classes named above; [1] the mixing rule is an own estimate checked in {@link CheckTable}.
 */
public final class SyrupBoiling {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "water left after cooking",
      "W = W_sucrose(p/p_sat(T), T)·Σ sᵢ·rᵢ, water = W/(1 + W)",
      "Starzak and Peacock 1997 with Stokes and Robinson 1966; ratios r are an own estimate",
      Confidence.MODEL);

  /** Sugar is caramel well before; the search for a boiling point ends here. */
  private static final double HIGHEST_KELVIN = 473.15;

  /** A root of the search is met far better; what misses it by more is the seam of two ranges, and no root. */
  private static final double SEAM = 1e-7;

  private SyrupBoiling() {}

  /**
   * Returns the share of water in the syrup once it boils at the given temperature.
   *
   * @param solids what the syrup is made of; its own water is ignored
   * @param temperature at which it boils
   * @param pressure above it
   */
  public static Outcome<Ratio> waterLeft(
      Composition solids, Temperature temperature, Pressure pressure) {
    WaterHolding holding = holding(solids);
    if (!holding.isMeaningful()) {
      return nothingDissolves();
    }
    double kelvin = temperature.kelvin();
    if (!SaturationLine.isInRange(kelvin)) {
      return SaturationLine.pressureAt(temperature).map(never -> Ratio.ZERO);
    }
    double activity = pressure.pascals() / SaturationLine.pascals(kelvin);
    if (activity >= 1) {
      return Outcome.unknown(
          Reason.NO_SOLUTION,
          "nothing boils at %.1f °C under %.1f kPa",
          temperature.celsius(),
          pressure.kilopascals());
    }
    if (!SucroseActivity.covers(activity, kelvin)) {
      return tooDry(temperature);
    }
    double perSolids = SucroseActivity.waterPerSolids(activity, kelvin) * holding.at(activity);
    return Outcome.known(Ratio.ofFraction(perSolids / (1 + perSolids)));
  }

  /**
   * Returns the temperature at which a syrup boils.
   *
   * @param syrup with its water
   * @param pressure above it
   */
  public static Outcome<Temperature> boilingPoint(Composition syrup, Pressure pressure) {
    return SaturationLine.boilingPoint(pressure)
        .flatMap(ofWater -> boilingPoint(syrup, pressure, ofWater));
  }

  private static Outcome<Temperature> boilingPoint(
      Composition syrup, Pressure pressure, Temperature ofWater) {
    Composition staying = withoutEthanol(syrup);
    if (!staying.hasSolids()) {
      return Outcome.known(ofWater);
    }
    WaterHolding holding = WaterHolding.of(staying);
    if (!holding.isMeaningful()) {
      return nothingDissolves();
    }
    double wanted = staying.water().fraction() / staying.solids().fraction();
    double start = Math.nextUp(ofWater.kelvin());
    UnivariateFunction wetterThanBoiling =
        kelvin -> surplusActivity(wanted, holding, pressure, kelvin);
    var found = Root.between(start, HIGHEST_KELVIN, wetterThanBoiling);
    if (found.isEmpty()) {
      return tooDry(Temperature.ofKelvin(HIGHEST_KELVIN));
    }
    double kelvin = found.getAsDouble();
    // Between the cool and the hot range the function jumps over zero where no syrup boils.
    double miss = wanted / (1 + wanted) - waterFraction(holding, pressure, kelvin);
    boolean atSeam = Math.abs(miss) > SEAM;
    double activity = pressure.pascals() / SaturationLine.pascals(kelvin);
    return atSeam || !SucroseActivity.covers(activity, kelvin)
        ? tooDry(Temperature.ofKelvin(kelvin))
        : Outcome.known(Temperature.ofKelvin(kelvin));
  }

  /**
   * By how much the syrup's water activity is above that at which it would boil.
   *
   * <p>It has the sign of the water that is too much, and needs no search of its own for each temperature.
   */
  private static double surplusActivity(
      double waterPerSolids, WaterHolding holding, Pressure pressure, double kelvin) {
    double activity = boilingActivity(pressure, kelvin);
    double solids = 1 / (1 + waterPerSolids / holding.at(activity));
    double most = SucroseActivity.mostSolids(kelvin);
    return solids > most ? most - solids : SucroseActivity.activity(solids, kelvin) - activity;
  }

  private static double boilingActivity(Pressure pressure, double kelvin) {
    return Math.min(pressure.pascals() / SaturationLine.pascals(kelvin), 1 - 1e-12);
  }

  /** As a share of the syrup and not to the solids, since that grows without bound towards pure water. */
  private static double waterFraction(WaterHolding holding, Pressure pressure, double kelvin) {
    double activity = boilingActivity(pressure, kelvin);
    double perSolids = SucroseActivity.waterPerSolids(activity, kelvin) * holding.at(activity);
    return perSolids / (1 + perSolids);
  }

  /**
   * Returns what is left of a portion that is cooked to a temperature.
   *
   * <p>A portion that holds less water than the boiling syrup would reaches the temperature without boiling and loses
   * none. Ethanol is driven off either way.
   */
  public static Outcome<CookOff> cook(Portion portion, Temperature temperature, Pressure pressure) {
    return waterLeft(portion.composition(), temperature, pressure)
        .flatMap(left -> cookedTo(left, portion));
  }

  private static Outcome<CookOff> cookedTo(Ratio water, Portion portion) {
    Mass ethanol = portion.massOf(Component.ETHANOL);
    Mass before = portion.massOf(Component.WATER);
    Mass solids = portion.mass().minus(before).minus(ethanol);
    Mass held = solids.times(water.fraction() / water.complement().fraction());
    Mass after = held.compareTo(before) < 0 ? held : before;
    Mass cooked = solids.plus(after);
    if (cooked.kilograms() <= 0) {
      return nothingDissolves();
    }
    Composition composition =
        withoutEthanol(portion.composition()).withWaterFraction(after.dividedBy(cooked));
    return Outcome.known(
        new CookOff(new Portion(cooked, composition), before.minus(after), ethanol));
  }

  /**
   * Returns the temperature that leaves under one pressure the water which another temperature leaves elsewhere.
   *
   * @param solids what the syrup is made of
   * @param target the cook temperature as written
   * @param written the pressure for which it was written
   * @param local the pressure in this kitchen
   */
  public static Outcome<Temperature> sameSolids(
      Composition solids, Temperature target, Pressure written, Pressure local) {
    return waterLeft(solids, target, written)
        .flatMap(left -> boilingPoint(withoutEthanol(solids).withWaterFraction(left), local));
  }

  private static WaterHolding holding(Composition composition) {
    return WaterHolding.of(withoutEthanol(composition));
  }

  private static Composition withoutEthanol(Composition composition) {
    return composition.fraction(Component.ETHANOL) == 0
        ? composition
        : composition
            .only(component -> component != Component.ETHANOL)
            .orElse(Composition.of(Component.WATER));
  }

  private static <T> Outcome<T> nothingDissolves() {
    return Outcome.unknown(Reason.NOT_MODELLED, "hardly any of it dissolves in water");
  }

  private static <T> Outcome<T> tooDry(Temperature temperature) {
    return Outcome.unknown(
        Reason.OUTSIDE_VALID_RANGE,
        "at %.0f °C less water is left than the boiling model covers",
        temperature.celsius());
  }
}
