package dev.kettlemark.features;

import dev.kettlemark.analysis.ParcelWater;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
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
    return new ParcelWater(parcel).band();
  }

  /** The water activity at a temperature, over the band of the water; unknown where the model ends. */
  Outcome<Band<Ratio>> activityAt(Temperature temperature) {
    return new ParcelWater(parcel).activityAt(temperature);
  }

  /** The water activity at which most instruments measure, such as {@code 0.55–0.59}. */
  Optional<String> activity() {
    return activityAt(MEASURED_AT).toOptional().map(Display::activity);
  }
}
