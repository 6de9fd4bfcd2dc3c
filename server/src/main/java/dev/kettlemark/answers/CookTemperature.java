package dev.kettlemark.answers;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.Equation;
import dev.kettlemark.science.GlassTransition;
import dev.kettlemark.science.SugarStage;
import dev.kettlemark.science.SyrupBoiling;
import dev.kettlemark.science.WaterActivity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the temperature to cook a stage to for a wanted result.
 *
 * <p>The whole formula is run again for each temperature that is tried, so whatever meets the syrup
 * later counts. The range searched runs from where the charge of the pan starts to boil to where the
 * boiling model ends; over it water, water activity and softness only fall.
 *
 * <p>The band of the answer is that of the boiling model: one percent point of water in the pan.
 */
public final class CookTemperature {

  /** Names the search in a derivation. */
  static final Equation EQUATION = new Equation(
      "cook temperature for a wanted result",
      "figure(T) = wanted, the formula run through all its stages for each T",
      "search over the boiling model; see its own sources",
      Confidence.MODEL);

  /** Expected error of the water left; see {@link SyrupBoiling}. */
  private static final Ratio MODEL_ERROR = Ratio.ofPercent(1);

  /** No syrup is boiled hotter; the search for the end of the model starts here. */
  private static final double HOTTEST_CELSIUS = 180;

  private static final double STEP = 0.25;

  private static final String HOT = "hot sugar sticks to the skin and burns deeply";

  private static final String CARAMEL =
      "from 160 °C on sugar turns to caramel, and the model no longer holds";

  private CookTemperature() {}

  /** The cook temperature of the last cook of a stage. */
  public static Outcome<Answer> of(ComputedFormula formula, String stage, Wish wish) {
    return CookPlaces.lastOf(formula, stage).flatMap(place -> of(formula, place, wish));
  }

  /** The cook temperature of one step. */
  public static Outcome<Answer> of(ComputedFormula formula, StepPlace place, Wish wish) {
    return Outcome.both(wish.checked(), range(formula, place), (checked, range) -> range)
        .flatMap(range -> {
          Search search = new Search(
              range.low().celsius(),
              range.high().celsius(),
              celsius -> wish.figure(
                  cooked(formula, place, Temperature.ofCelsius(celsius)), place.stage()));
          return search
              .reach()
              .flatMap(reach -> reach.holds(wish.wanted())
                  ? search.settingFor(wish.wanted())
                  : unreachable(formula, place, wish, range, reach))
              .map(celsius -> answer(formula, place, wish, Temperature.ofCelsius(celsius), range));
        });
  }

  /** From where the pan's charge boils to where the model ends. */
  static Outcome<Band<Temperature>> range(ComputedFormula formula, StepPlace place) {
    Pressure pressure = formula.kitchen().pressure();
    return CookPlaces.charge(formula, place)
        .flatMap(charge -> SyrupBoiling.boilingPoint(charge, pressure)
            .flatMap(low -> hottest(charge, pressure)
                .filter(high -> high.compareTo(low) > 0)
                .map(high -> Outcome.known(new Band<>(low, high)))
                .orElseGet(() -> Outcome.unknown(
                    Reason.OUTSIDE_VALID_RANGE,
                    "the pan holds less water than the boiling model covers"))));
  }

  private static Optional<Temperature> hottest(Composition charge, Pressure pressure) {
    for (double celsius = HOTTEST_CELSIUS; celsius > 60; celsius -= STEP) {
      Temperature temperature = Temperature.ofCelsius(celsius);
      if (SyrupBoiling.waterLeft(charge, temperature, pressure).isKnown()) {
        return Optional.of(temperature);
      }
    }
    return Optional.empty();
  }

  private static ComputedFormula cooked(
      ComputedFormula formula, StepPlace place, Temperature target) {
    return formula.experiment().cooking(place, target).compute();
  }

  private static <T> Outcome<T> unreachable(
      ComputedFormula formula,
      StepPlace place,
      Wish wish,
      Band<Temperature> range,
      Search.Reach reach) {
    return Outcome.unknown(
        Reason.NO_SOLUTION,
        "`%s` cooked to anything from %s to %s gives %s to %s %s, never %s",
        CookPlaces.stageName(formula, place),
        Display.celsius(range.low()),
        Display.celsius(range.high()),
        wish.shown(reach.atLow()),
        wish.shown(reach.atHigh()),
        wish.of(),
        wish.shown(wish.wanted()));
  }

  private static Answer answer(
      ComputedFormula formula,
      StepPlace place,
      Wish wish,
      Temperature found,
      Band<Temperature> range) {
    Temperature target = readable(found);
    ComputedFormula after = cooked(formula, place, target);
    StepResult step = after.process().stages().get(place.stage()).steps().get(place.step());
    Band<Temperature> band = band(step, target, after.kitchen().pressure(), range);
    String stage = CookPlaces.stageName(formula, place);
    List<Value> values = new ArrayList<>();
    values.add(Value.of("cook-temperature", target, band));
    values.addAll(outcome(after, place.stage()));
    Optional<Temperature> now = Boiling.target(CookPlaces.step(formula, place).step())
        .map(written ->
            Temperature.ofKelvin((written.low().kelvin() + written.high().kelvin()) / 2));
    now.ifPresent(written -> values.add(Value.of("cook-temperature-now", written)));
    List<Derivation> inputs = new ArrayList<>();
    String wanted = wish instanceof Wish.Texture
        ? wish.words() + ", " + wish.words(wish.wanted())
        : wish.words();
    inputs.add(Derivation.given("wanted", wanted, "the question"));
    now.ifPresent(written ->
        inputs.add(Derivation.given("cooked to now", Display.celsius(written), "the step")));
    inputs.add(Derivation.given(
        "searched",
        Display.celsius(range.low()) + " to " + Display.celsius(range.high()),
        "boiling point of the charge, end of the boiling model"));
    step.derivation().ifPresent(inputs::add);
    return new Answer(
        "Cook " + stage + " to " + Display.celsius(target) + " for " + wish.words(),
        values,
        List.of(new Change.Cook(place, target)),
        cautions(target),
        EQUATION.derive(Display.celsius(target) + " (" + Display.celsius(band) + ")", inputs));
  }

  /** Whether an answer cooks anything so hot that sugar browns. */
  public static boolean leadsToCaramel(Answer answer) {
    return answer.changes().stream()
        .anyMatch(change -> change instanceof Change.Cook cook && isCaramel(cook.target()));
  }

  /** What a cook may say of itself to whoever stands at the pan. */
  static List<Remark> cautions(Temperature target) {
    return isCaramel(target)
        ? List.of(Remark.of(HOT), Remark.of(CARAMEL))
        : List.of(Remark.of(HOT));
  }

  /** Whether sugar browns at a temperature. */
  public static boolean isCaramel(Temperature target) {
    return target.compareTo(SugarStage.LIGHT_CARAMEL.range().low()) >= 0;
  }

  /** What comes of a formula, as far as it is known. */
  static List<Value> outcome(ComputedFormula formula, int stage) {
    List<Value> values = new ArrayList<>();
    StageResult left = formula.process().stages().get(stage);
    left.left()
        .composition()
        .ifKnown(composition -> values.add(Value.estimate("water-in-stage", composition.water())));
    formula.composition().ifKnown(composition -> {
      values.add(Value.estimate("water-in-finished", composition.water()));
      WaterActivity.of(composition, Wish.MEASURED_AT)
          .ifKnown(activity -> values.add(Value.activity("water-activity", activity)));
      GlassTransition.of(composition)
          .ifKnown(glass -> values.add(Value.of(
              "glass-transition",
              Temperature.ofKelvin((glass.low().kelvin() + glass.high().kelvin()) / 2),
              glass)));
    });
    return values;
  }

  /** The temperatures that leave one percent point more and less in the pan. */
  private static Band<Temperature> band(
      StepResult step, Temperature target, Pressure pressure, Band<Temperature> range) {
    return CookPlaces.mass(step.after())
        .map(pan -> {
          double water = pan.water().fraction();
          Temperature low =
              boiling(pan, water + MODEL_ERROR.fraction(), pressure).orElse(range.low());
          Temperature high =
              boiling(pan, water - MODEL_ERROR.fraction(), pressure).orElse(range.high());
          return Band.spanning(Band.spanning(low, high).low(), high).spanning(Band.of(target));
        })
        .orElse(Band.of(target));
  }

  private static Outcome<Temperature> boiling(Composition pan, double water, Pressure pressure) {
    return water > 0 && water < 1
        ? SyrupBoiling.boilingPoint(pan.withWaterFraction(Ratio.ofFraction(water)), pressure)
        : Outcome.unknown(Reason.OUTSIDE_VALID_RANGE, "no water would be left");
  }

  /** To the tenth of a degree that a probe reads. */
  static Temperature readable(Temperature temperature) {
    return Temperature.ofCelsius(Double.parseDouble(Display.fixed(temperature.celsius(), 1)));
  }
}
