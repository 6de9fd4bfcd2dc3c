package dev.kettlemark.analysis;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import dev.kettlemark.quantity.Volume;
import dev.kettlemark.science.DoctorSugars;
import dev.kettlemark.science.FoodEnergy;
import dev.kettlemark.science.GlassTransition;
import dev.kettlemark.science.SucroseSolubility;
import dev.kettlemark.science.Sweetness;
import dev.kettlemark.science.Texture;
import dev.kettlemark.science.WaterActivity;

/**
 * The figures of one mass: how wet, how sweet, how light it is, how it will eat and whether it will grain.
 *
 * <p>Everything that rests on the boiling model carries the band of the water it leaves. Whatever an
 * equation cannot answer is unknown with its reason.
 */
public final class MassFigures {

  /** Storage rooms and instruments lie between these; common practice, no source. */
  public static final Band<Temperature> STORED_AT =
      new Band<>(Temperature.ofCelsius(20), Temperature.ofCelsius(25));

  private final StageParcel parcel;
  private final Kitchen kitchen;

  private MassFigures(StageParcel parcel, Kitchen kitchen) {
    this.parcel = parcel;
    this.kitchen = kitchen;
  }

  public static MassFigures of(StageParcel parcel, Kitchen kitchen) {
    return new MassFigures(parcel, kitchen);
  }

  /** The figures of what a formula makes; empty for a formula without stages. */
  public static Outcome<MassFigures> of(ComputedFormula formula) {
    return formula
        .process()
        .last()
        .map(stage -> Outcome.known(of(stage.left(), formula.kitchen())))
        .orElseGet(() ->
            Outcome.unknown(Reason.MISSING_COMPOSITION, "the formula has no stage to make it in"));
  }

  public StageParcel parcel() {
    return parcel;
  }

  /** The temperature of the room in which the texture is judged. */
  public Temperature room() {
    return kitchen.room();
  }

  /** The share of water, within the slack of the boiling model. */
  public Outcome<Band<Ratio>> moisture() {
    return parcel.portion().map(portion -> {
      double mass = portion.mass().grams();
      double water = portion.mass().times(portion.composition().water()).grams();
      double slack = Math.min(parcel.slack().grams(), water);
      return mass - slack > 0
          ? Band.spanning(
              Ratio.ofFraction((water - slack) / (mass - slack)),
              Ratio.ofFraction((water + slack) / (mass + slack)))
          : Band.of(portion.composition().water());
    });
  }

  /** The water activity at a temperature, over the band of the water; true as long as nothing grains. */
  public Outcome<Band<Ratio>> waterActivity(Temperature temperature) {
    return overMoisture(composition -> composition.hasSolids()
        ? WaterActivity.of(composition, temperature).map(Band::of)
        : Outcome.unknown(Reason.NOT_MODELLED, "it is pure water"));
  }

  /** The water activity in storage, over the band of the water and of the room, and at least the model's error. */
  public Outcome<Band<Ratio>> waterActivity() {
    return Outcome.both(
            waterActivity(STORED_AT.low()), waterActivity(STORED_AT.high()), Band::spanning)
        .map(band -> band.spanning(WaterActivity.withError(Ratio.middleOf(band))));
  }

  /** The water activity in storage once the sucrose beyond saturation has crystallised. */
  public Outcome<Band<Ratio>> grainedWaterActivity() {
    return Outcome.both(grainedAt(STORED_AT.low()), grainedAt(STORED_AT.high()), Band::spanning)
        .map(band -> band.spanning(WaterActivity.withError(Ratio.middleOf(band))));
  }

  private Outcome<Band<Ratio>> grainedAt(Temperature temperature) {
    return overMoisture(composition -> SucroseSolubility.motherLiquor(composition, temperature)
        .flatMap(liquor -> WaterActivity.of(liquor, temperature))
        .map(Band::of));
  }

  /** Everything but sucrose as a share of all saccharides. */
  public Outcome<Ratio> doctorShare() {
    return parcel.composition().flatMap(DoctorSugars::doctorShare);
  }

  /** Grams of sucrose for one gram of water, over the band of the water. */
  public Outcome<Band<Ratio>> sucrosePerWater() {
    return overMoisture(composition -> composition.water().fraction() > 0
        ? Outcome.known(Band.of(Ratio.ofFraction(
            composition.fraction(Component.SUCROSE) / composition.water().fraction())))
        : Outcome.unknown(
            Reason.OUTSIDE_VALID_RANGE, "within its error it may hold no water at all"));
  }

  /** Sucrose in the water against what the water could dissolve in storage; 1 is saturated. */
  public Outcome<Band<Ratio>> supersaturation() {
    return overMoisture(composition ->
        SucroseSolubility.supersaturation(composition, STORED_AT.low()).map(Band::of));
  }

  /** The glass transition of the sugars without any water. */
  public Outcome<Temperature> dryGlassTransition() {
    return parcel
        .composition()
        .flatMap(composition -> composition
            .dry()
            .map(GlassTransition::of)
            .orElseGet(
                () -> Outcome.unknown(Reason.MISSING_COMPOSITION, "it holds nothing but water")))
        .map(Band::low);
  }

  /** The glass transition with the water that is in it, over the band of the water and of the constants. */
  public Outcome<Band<Temperature>> glassTransition() {
    return overMoisture(GlassTransition::of);
  }

  /** How the sugar phase eats at the temperature of the room. */
  public Outcome<Band<Texture>> texture() {
    return glassTransition().map(band -> Texture.of(band, room()));
  }

  /** How far the glass transition lies above the room; negative where the mass is no glass. */
  public Outcome<Band<TemperatureDifference>> glassMargin() {
    return glassTransition().map(band -> Texture.margin(band, room()));
  }

  /** How sweet it tastes against the same mass of sucrose. */
  public Outcome<Band<Ratio>> sweetness() {
    return parcel.composition().map(Sweetness::bandOf);
  }

  /** Kilocalories per 100 g by the European factors. */
  public Outcome<Double> europeanKilocalories() {
    return parcel.composition().map(FoodEnergy::europeanKilocalories);
  }

  /** Kilojoules per 100 g by the European factors. */
  public Outcome<Double> europeanKilojoules() {
    return parcel.composition().map(FoodEnergy::europeanKilojoules);
  }

  /** Kilocalories per 100 g by the American factors. */
  public Outcome<Double> americanKilocalories() {
    return parcel.composition().map(FoodEnergy::americanKilocalories);
  }

  /** The density if all air were pressed out, at room temperature. */
  public Outcome<Density> densityWithoutAir() {
    return Air.withoutAir(parcel);
  }

  /** The density with its air, at room temperature. */
  public Outcome<Band<Density>> density() {
    return Outcome.both(parcel.mass(), volume(), MassFigures::density).flatMap(outcome -> outcome);
  }

  /** The volume of air for each volume of the mass without air. */
  public Outcome<Band<Ratio>> overrun() {
    return volumeWithoutAir()
        .flatMap(dense -> dense.litres() > 0
            ? parcel.air().map(air -> air.map(volume -> volume.dividedBy(dense)))
            : Outcome.unknown(Reason.MISSING_FIGURE, "nothing is weighed in"));
  }

  /** The volume with its air, at room temperature. */
  public Outcome<Band<Volume>> volume() {
    return volumeWithoutAir()
        .flatMap(dense ->
            parcel.air().map(air -> new Band<>(dense.plus(air.low()), dense.plus(air.high()))));
  }

  private Outcome<Volume> volumeWithoutAir() {
    return Outcome.both(parcel.mass(), densityWithoutAir(), Mass::at);
  }

  private static Outcome<Band<Density>> density(Mass mass, Band<Volume> volume) {
    return mass.grams() > 0
        ? Outcome.known(Band.spanning(mass.per(volume.high()), mass.per(volume.low())))
        : Outcome.unknown(Reason.MISSING_FIGURE, "nothing is weighed in");
  }

  /** Asks one question at both ends of the band of the water. */
  private <T extends Comparable<? super T>> Outcome<Band<T>> overMoisture(
      OfComposition<T> question) {
    return Outcome.both(
            parcel.composition(),
            moisture(),
            (composition, water) -> water.isExact() || !composition.hasSolids()
                ? question.ask(composition)
                : Outcome.both(
                    question.ask(composition.withWaterFraction(water.low())),
                    question.ask(composition.withWaterFraction(water.high())),
                    Band::spanning))
        .flatMap(outcome -> outcome);
  }

  /** A question that a composition answers with a band. */
  private interface OfComposition<T extends Comparable<? super T>> {
    Outcome<Band<T>> ask(Composition composition);
  }
}
