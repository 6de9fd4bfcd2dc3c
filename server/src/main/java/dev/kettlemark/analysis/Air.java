package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.Volume;
import dev.kettlemark.science.Foam;
import dev.kettlemark.science.FoodDensity;
import dev.kettlemark.science.WhippedDensity;
import java.util.List;
import java.util.Optional;

/** How much air a mass holds after it is whipped, folded or measured. */
final class Air {

  /** A mass without bubbles. */
  static final Outcome<Band<Volume>> NONE = Outcome.known(Band.of(Volume.ZERO));

  /** Volumes are told for the room, where a mass is measured and moulded. */
  static final Temperature ROOM = Temperature.ofCelsius(20);

  /** From this share of what is folded in on, the whole usual loss of air counts; an own estimate. */
  private static final double FULL_LOSS_SHARE = 0.25;

  private Air() {}

  /** The air that whipping usually brings into a mass. */
  static Outcome<Band<Volume>> whippedInto(StageParcel mass) {
    return mass.composition().flatMap(WhippedDensity::of).flatMap(density -> at(mass, density));
  }

  /** How the density of a whipped mass is told. */
  static Optional<Derivation> whipped(StageParcel mass) {
    return mass.composition()
        .flatMap(composition -> WhippedDensity.of(composition)
            .map(density -> WhippedDensity.EQUATION.derive(
                Display.density(density),
                List.of(Derivation.given(
                    "solids of the mass",
                    Display.estimate(composition.solids()),
                    "the steps before")))))
        .toOptional();
  }

  /** The air in a mass of the given density; none where the mass without air is lighter. */
  static Outcome<Band<Volume>> at(StageParcel mass, Band<Density> density) {
    return Outcome.both(
        mass.mass(),
        withoutAir(mass),
        (weight, dense) -> density.map(foam -> gas(weight, dense, foam)));
  }

  /** The density of a mass if all air were pressed out, at room temperature. */
  static Outcome<Density> withoutAir(StageParcel mass) {
    return mass.composition().flatMap(composition -> FoodDensity.of(composition, ROOM));
  }

  /** What is left of the air when parcels are worked into one another. */
  static Outcome<Band<Volume>> folded(List<StageParcel> parcels) {
    Outcome<Band<Volume>> air = NONE;
    Outcome<Mass> foams = Outcome.known(Mass.ZERO);
    Outcome<Mass> all = Outcome.known(Mass.ZERO);
    for (StageParcel parcel : parcels) {
      air = Outcome.both(air, parcel.air(), Air::sum);
      all = Outcome.both(all, parcel.mass(), Mass::plus);
      if (parcel.isAerated()) {
        foams = Outcome.both(foams, parcel.mass(), Mass::plus);
      }
    }
    Outcome<Mass> foam = foams;
    Outcome<Double> added = all.flatMap(whole ->
        foam.map(part -> whole.grams() > 0 ? whole.minus(part).grams() / whole.grams() : 0.0));
    return Outcome.both(air, added, Air::kept);
  }

  private static Band<Volume> kept(Band<Volume> air, double added) {
    double loss = Math.min(1, Math.max(0, added) / FULL_LOSS_SHARE);
    return new Band<>(
        air.low().times(1 - loss * Foam.USUAL_RETENTION.low().complement().fraction()),
        air.high().times(1 - loss * Foam.USUAL_RETENTION.high().complement().fraction()));
  }

  private static Band<Volume> sum(Band<Volume> one, Band<Volume> other) {
    return new Band<>(one.low().plus(other.low()), one.high().plus(other.high()));
  }

  private static Volume gas(Mass mass, Density withoutAir, Density foam) {
    double millilitres = mass.at(foam).millilitres() - mass.at(withoutAir).millilitres();
    return Volume.ofMillilitres(Math.max(0, millilitres));
  }
}
