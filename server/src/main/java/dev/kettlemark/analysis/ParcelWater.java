package dev.kettlemark.analysis;

import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.WaterActivity;

/** The water of a mass, and how free it is. */
public record ParcelWater(StageParcel parcel) {

  /** The band of the share of water that the slack of the boiling model leaves. */
  public Outcome<Band<Ratio>> band() {
    return parcel.portion().map(portion -> {
      double mass = portion.mass().grams();
      double water = portion.mass().times(portion.composition().water()).grams();
      double slack = Math.min(parcel.slack().grams(), water);
      if (!(mass - slack > 0)) {
        return Band.of(portion.composition().water());
      }
      return Band.spanning(
          Ratio.ofFraction((water - slack) / (mass - slack)),
          Ratio.ofFraction((water + slack) / (mass + slack)));
    });
  }

  /** The water activity at a temperature, over the band of the water; unknown where the model ends. */
  public Outcome<Band<Ratio>> activityAt(Temperature temperature) {
    return Outcome.both(
            parcel.composition().flatMap(ParcelWater::withSolids),
            band(),
            (composition, band) -> Outcome.both(
                activity(composition, band.low(), temperature),
                activity(composition, band.high(), temperature),
                Band::spanning))
        .flatMap(outcome -> outcome);
  }

  private static Outcome<Composition> withSolids(Composition composition) {
    return composition.hasSolids()
        ? Outcome.known(composition)
        : Outcome.unknown(Reason.NOT_MODELLED, "it is pure water");
  }

  private static Outcome<Ratio> activity(
      Composition composition, Ratio water, Temperature temperature) {
    return WaterActivity.of(composition.withWaterFraction(water), temperature);
  }
}
