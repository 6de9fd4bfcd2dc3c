package dev.kettlemark.features;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.WaterActivity;
import java.util.Optional;

/** What is told of a mass once its cooking is done: weight, water, water activity. */
final class FinishedMass {

  /** The usual temperature at which a water activity is measured; common practice, no source. */
  static final Temperature MEASURED_AT = Temperature.ofCelsius(25);

  private final StageParcel parcel;

  FinishedMass(StageParcel parcel) {
    this.parcel = parcel;
  }

  /** The weight, with its slack where a model gave it; empty where unknown. */
  Optional<String> weight() {
    String slack =
        parcel.slack().grams() > 0 ? " ± " + Display.trimmed(parcel.slack().grams(), 1) + " g" : "";
    return parcel.mass().toOptional().map(mass -> Display.mass(mass) + slack);
  }

  /** The share of water, one decimal; empty where unknown. */
  Optional<String> water() {
    return parcel.composition().toOptional().map(c -> Display.estimate(c.water()));
  }

  /** The band of the share of water that the slack of the boiling model leaves. */
  Outcome<Band<Ratio>> waterBand() {
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
  Outcome<Band<Ratio>> activityAt(Temperature temperature) {
    return Outcome.both(
            parcel.composition().flatMap(FinishedMass::withSolids),
            waterBand(),
            (composition, band) -> Outcome.both(
                activity(composition, band.low(), temperature),
                activity(composition, band.high(), temperature),
                Band::spanning))
        .flatMap(outcome -> outcome);
  }

  /** The water activity at which most instruments measure, such as {@code 0.55–0.59}. */
  Optional<String> activity() {
    return activityAt(MEASURED_AT).toOptional().map(Display::activity);
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
