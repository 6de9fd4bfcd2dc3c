package dev.kettlemark.answers;

import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import dev.kettlemark.science.SyrupBoiling;
import java.util.List;

/**
 * A cook that did not end where it should: how much water its solids hold at the temperature that is read,
 * and how much at the one that was meant.
 *
 * <p>The boiling model errs alike on both, so their difference is as good as the thermometer.
 *
 * @param composition of what is cooked; its own water is ignored
 * @param solids that lie in the pan
 * @param water that lay in the pan before; no syrup ever holds more
 * @param pressure of the air in the kitchen
 * @param meant the temperature at which it should have ended, as a thermometer reads it there
 */
public record CookMissed(
    Composition composition, Mass solids, Mass water, Pressure pressure, Temperature meant) {

  /** Grams of water, and between which they lie for what the thermometer may be off by. */
  public record Water(Mass low, Mass best, Mass high) {}

  /** The cook of a step; unknown where nobody can tell what lies in the pan. */
  public static Outcome<CookMissed> of(StepResult cook, Kitchen kitchen) {
    if (cook.after().size() != 1) {
      return Outcome.unknown(Reason.MISSING_FIGURE, "nothing is cooked");
    }
    StageParcel left = cook.after().get(0);
    return Outcome.both(
        left.portion(),
        waterOf(cook.before()),
        (portion, water) -> new CookMissed(
            portion.composition(),
            portion.mass().times(portion.composition().solids()),
            water,
            kitchen.pressure(),
            Temperature.middleOf(left.temperature())));
  }

  private static Outcome<Mass> waterOf(List<StageParcel> parcels) {
    Outcome<Mass> sum = Outcome.known(Mass.ZERO);
    for (StageParcel parcel : parcels) {
      sum = Outcome.both(
          sum, parcel.portion().map(portion -> portion.massOf(Component.WATER)), Mass::plus);
    }
    return sum;
  }

  /** The water that must go in again where the thermometer reads more than was meant. */
  public Outcome<Water> missing(Temperature read, TemperatureDifference off) {
    return both(between(read.minus(off)), between(read), between(read.plus(off)), 1);
  }

  /** The water that must still leave where the thermometer reads less than was meant. */
  public Outcome<Water> excess(Temperature read, TemperatureDifference off) {
    return both(between(read.plus(off)), between(read), between(read.minus(off)), -1);
  }

  private static Outcome<Water> both(
      Outcome<Double> low, Outcome<Double> best, Outcome<Double> high, int sign) {
    return Outcome.both(low, high, (least, most) -> new double[] {least, most})
        .flatMap(ends -> best.map(middle ->
            new Water(grams(sign * ends[0]), grams(sign * middle), grams(sign * ends[1]))));
  }

  private static Mass grams(double grams) {
    return Mass.ofGrams(Math.max(0, grams));
  }

  /** The water that is held at what was meant less that at another temperature, in grams. */
  private Outcome<Double> between(Temperature other) {
    return Outcome.both(held(meant), held(other), (here, there) -> here - there);
  }

  private Outcome<Double> held(Temperature temperature) {
    return SyrupBoiling.waterLeft(composition, temperature, pressure)
        .map(share -> Math.min(
            water.grams(),
            solids.grams() * share.fraction() / share.complement().fraction()));
  }

  /** The share of solids once it boils at a temperature. */
  public Outcome<Ratio> solidsAt(Temperature temperature) {
    return held(temperature)
        .map(grams -> Ratio.ofFraction(solids.grams() / (solids.grams() + grams)));
  }
}
