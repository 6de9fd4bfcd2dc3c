package dev.kettlemark.analysis;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.CookOff;
import dev.kettlemark.science.StandardAtmosphere;
import dev.kettlemark.science.SugarStage;
import dev.kettlemark.science.SyrupBoiling;
import java.util.List;
import java.util.Optional;

/**
 * What a boil leaves of a charge.
 *
 * @param after the mass that is left
 * @param evaporated water and spirit that left
 * @param derivation how it came about
 */
public record Boiling(StageParcel after, Mass evaporated, Derivation derivation) {

  /** Expected error of the water left, in percent points; see {@link SyrupBoiling}. */
  private static final double ERROR_POINTS = 1.0;

  /** Where the model ends nearly all water is gone; this share is still counted. */
  private static final Ratio LAST_WATER = Ratio.ofPercent(0.5);

  /** Behind {@code at} it says that a cook temperature holds for sea level, wherever it is cooked. */
  public static final String FOR_SEA_LEVEL = "sea-level";

  /** Above this temperature in °C a syrup may be drier than the model knows. */
  private static final double MODEL_ENDS = 150;

  static Boiling of(Statement step, StageParcel charge, Kitchen kitchen) {
    Optional<Band<Temperature>> target = target(step);
    if (target.isEmpty()) {
      return untouched(
          charge, Reason.MISSING_FIGURE, Remark.of("the step gives no temperature to cook to"));
    }
    Temperature middle = Temperature.middleOf(target.get());
    Kitchen meant = meant(step, kitchen);
    StageParcel hot = charge.at(target.get().map(t -> local(charge, t, meant, kitchen)));
    Outcome<Portion> portion = charge.portion();
    if (portion instanceof Outcome.Unknown<Portion> unknown) {
      return untouched(hot, unknown.reason(), unknown.why());
    }
    if (charge.mass().orElse(Mass.ZERO).grams() <= 0) {
      return new Boiling(hot, Mass.ZERO, untold("there is nothing to cook"));
    }
    return portion
        .flatMap(p -> SyrupBoiling.cook(p, middle, meant.pressure())
            .map(off -> cooked(hot, p, off, middle, meant)))
        .fold(
            boiling -> boiling,
            unknown -> isBeyondTheModel(unknown, portion, middle)
                ? driedOut(hot, portion, middle, unknown.because())
                : untouched(hot, unknown.reason(), unknown.why()));
  }

  /** The temperature a cook step aims at: as written, or the middle of the sugar stage it names. */
  public static Optional<Band<Temperature>> target(Statement step) {
    return step.figure(Connective.TO, Unit.Dimension.TEMPERATURE)
        .or(() -> step.figure(Connective.AT, Unit.Dimension.TEMPERATURE))
        .map(figure -> band(figure.value()))
        .or(() -> step.names(Connective.UNTIL).stream()
            .flatMap(name -> SugarStage.ofWord(name.value()).stream())
            .map(SugarStage::range)
            .findFirst());
  }

  /** The kitchen for which a cook temperature is written: this one, or any at sea level. */
  public static Kitchen meant(Statement step, Kitchen kitchen) {
    return step.has(Connective.AT, FOR_SEA_LEVEL) ? Kitchen.of(Optional.empty()) : kitchen;
  }

  /** What leaves the same solids in one kitchen as a temperature does in another. */
  private static Temperature local(
      StageParcel charge, Temperature written, Kitchen meant, Kitchen kitchen) {
    return meant.pressure().equals(kitchen.pressure())
        ? written
        : charge
            .composition()
            .flatMap(composition ->
                SyrupBoiling.sameSolids(composition, written, meant.pressure(), kitchen.pressure()))
            .orElse(written);
  }

  /** The band of a temperature as written: its range, or its tolerance. */
  public static Band<Temperature> band(Quantity quantity) {
    double slack = quantity.toleranceInBase().map(t -> t.doubleValue()).orElse(0.0);
    return Band.spanning(
        Temperature.ofCelsius(quantity.lowInBase().doubleValue() - slack),
        Temperature.ofCelsius(quantity.highInBase().doubleValue() + slack));
  }

  /** The share of water left at a temperature; where the model ends nearly none. */
  static Outcome<Ratio> waterLeft(Composition solids, Temperature temperature, Pressure pressure) {
    Outcome<Ratio> left = SyrupBoiling.waterLeft(solids, temperature, pressure);
    boolean tooDry = left instanceof Outcome.Unknown<Ratio> unknown
        && unknown.reason() == Reason.OUTSIDE_VALID_RANGE
        && temperature.celsius() > MODEL_ENDS;
    return tooDry ? Outcome.known(LAST_WATER) : left;
  }

  /** Where a mass boils; its own temperature where that is unknown. */
  static Band<Temperature> boilingPoint(StageParcel charge, Kitchen kitchen) {
    return charge
        .composition()
        .flatMap(composition -> SyrupBoiling.boilingPoint(composition, kitchen.pressure()))
        .map(Band::of)
        .orElse(charge.temperature());
  }

  /** What is said of a boil whose loss nobody can know. */
  static Derivation untold() {
    return untold("the step gives neither a lid nor a temperature to cook to");
  }

  private static Derivation untold(String because) {
    return new Derivation(
        "water boiled away", "not counted", "", because, Confidence.RULE_OF_THUMB, List.of());
  }

  /** Whether a charge is cooked so hot that nearly nothing but solids is left. */
  private static boolean isBeyondTheModel(
      Outcome.Unknown<Boiling> unknown, Outcome<Portion> portion, Temperature target) {
    return unknown.reason() == Reason.OUTSIDE_VALID_RANGE
        && target.celsius() > MODEL_ENDS
        && portion.map(p -> solids(p).kilograms() > 0).orElse(false);
  }

  /** What neither boils away nor evaporates; nothing where the rounding of the water swallows it. */
  private static Mass solids(Portion portion) {
    return portion
        .mass()
        .minus(portion.massOf(Component.WATER))
        .minus(portion.massOf(Component.ETHANOL));
  }

  private static Boiling driedOut(
      StageParcel hot, Outcome<Portion> portion, Temperature target, String because) {
    CookOff off = portion.map(Boiling::driedOut).toOptional().orElseThrow();
    Mass gone = off.water().plus(off.ethanol());
    Derivation derivation = new Derivation(
        "water left after cooking",
        "about " + Display.estimate(off.cooked().composition().water()),
        "nearly all water is gone: " + Display.estimate(LAST_WATER) + " is still counted",
        "the boiling model ends here: " + because,
        Confidence.RULE_OF_THUMB,
        List.of(
            Derivation.given("cooked to", Display.celsius(target), "the step"),
            Derivation.given("boiled away", Display.mass(gone), "mass balance")));
    return left(hot, off, derivation);
  }

  private static CookOff driedOut(Portion portion) {
    Mass water = portion.massOf(Component.WATER);
    Mass ethanol = portion.massOf(Component.ETHANOL);
    Mass solids = solids(portion);
    Mass held = solids.times(LAST_WATER.fraction() / LAST_WATER.complement().fraction());
    Mass left = held.compareTo(water) < 0 ? held : water;
    Mass mass = solids.plus(left);
    Composition composition = portion
        .composition()
        .only(component -> component != Component.ETHANOL)
        .map(rest -> rest.withWaterFraction(left.dividedBy(mass)))
        .orElse(portion.composition());
    return new CookOff(new Portion(mass, composition), water.minus(left), ethanol);
  }

  private static Boiling cooked(
      StageParcel hot, Portion before, CookOff off, Temperature target, Kitchen kitchen) {
    Portion left = off.cooked();
    Mass gone = off.water().plus(off.ethanol());
    Derivation derivation = SyrupBoiling.EQUATION.derive(
        Display.estimate(left.composition().water()) + " ± 1",
        List.of(
            Derivation.given("cooked to", Display.celsius(target), "the step"),
            StandardAtmosphere.EQUATION.derive(
                Display.fixed(kitchen.pressure().kilopascals(), 1) + " kPa",
                List.of(Derivation.given(
                    "altitude", Display.fixed(kitchen.altitudeMetres(), 0) + " m", "the house"))),
            Derivation.given("weighed in", Display.mass(before.mass()), "the amounts"),
            Derivation.given(
                "water weighed in",
                Display.estimate(before.composition().water()),
                "the composition of the ingredients"),
            Derivation.given("boiled away", Display.mass(gone), "mass balance")));
    return left(hot, off, derivation);
  }

  private static Boiling left(StageParcel hot, CookOff off, Derivation derivation) {
    Portion left = off.cooked();
    Mass gone = off.water().plus(off.ethanol());
    Mass slack = gone.grams() > 0 ? left.mass().times(ERROR_POINTS / 100) : Mass.ZERO;
    return new Boiling(
        hot.holding(
            Outcome.known(left.mass()), hot.slack().plus(slack), Outcome.known(left.composition())),
        gone,
        derivation);
  }

  private static Boiling untouched(StageParcel charge, Reason reason, Remark why) {
    Derivation derivation = new Derivation(
        "water left after cooking", "unknown", "", why.english(), Confidence.MODEL, List.of());
    return new Boiling(
        charge.holding(Outcome.unknown(reason, why), charge.slack(), Outcome.unknown(reason, why)),
        Mass.ZERO,
        derivation);
  }
}
