package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** An experiment gives what the text with the same change gives. */
class ExperimentTest {

  private static final List<Document> PANTRY = Pantry.documents();

  private static final String TEXT = """
      house bench "Bench"
        bowl mixer holds 6 L whips 100-2000 g weighs 1.4 kg
        room at 20 °C
      formula f "F"
        percent of charge
        batch 1000 g
      stage syrup
        55.00 % white-sugar
        q.s. water
        cook to 120 °C ± 1
      stage body in mixer
        20.00 % egg-white at 20 °C
        0.40 % of finished xanthan-gum
        all of syrup
        stream syrup into egg-white
      """;

  private static ComputedFormula read(String text) {
    List<Document> all = new ArrayList<>(PANTRY);
    all.add(Document.of("bench.kettle", text));
    Snapshot snapshot = Snapshot.of(Library.of(all));
    return Formulas.computed(
            snapshot, snapshot.library().find(Kind.MATERIAL, "f").orElseThrow())
        .orElseThrow();
  }

  private static void assertSame(ComputedFormula expected, ComputedFormula actual) {
    assertEquals(
        expected.process().evaporated().grams(), actual.process().evaporated().grams(), 1e-9);
    assertEquals(expected.composition(), actual.composition());
    StageParcel one = expected.process().last().orElseThrow().left();
    StageParcel other = actual.process().last().orElseThrow().left();
    assertEquals(one.temperature(), other.temperature());
    assertEquals(one.mass(), other.mass());
    assertEquals(one.slack(), other.slack());
  }

  @Test
  void changesNothingByItself() {
    ComputedFormula formula = read(TEXT);
    assertSame(formula, formula.experiment().compute());
  }

  @Test
  void cooksToAnotherTemperatureAndSolvesSharesOfTheFinishedWeightAnew() {
    assertSame(
        read(TEXT.replace("to 120 °C", "to 131.5 °C")),
        read(TEXT)
            .experiment()
            .cooking(new StepPlace(0, 0), Temperature.ofCelsius(131.5))
            .compute());
  }

  @Test
  void givesAStepThatNamesASugarStageATemperature() {
    assertSame(
        read(TEXT.replace("to 120 °C ± 1", "to 125 °C")),
        read(TEXT.replace("to 120 °C ± 1", "until firm-ball"))
            .experiment()
            .cooking(new StepPlace(0, 0), Temperature.ofCelsius(125))
            .compute());
  }

  @Test
  void weighsAnotherAmountAndFillsUpTheRest() {
    assertSame(
        read(TEXT.replace("55.00 %", "50.00 %")),
        read(TEXT)
            .experiment()
            .weighing(0, new Measure.Share(new BigFraction(1, 2), Optional.empty()))
            .compute());
  }

  @Test
  void takesAnotherMaterialAndAnotherStartingTemperature() {
    ComputedFormula formula = read(TEXT);
    Material white = read(TEXT.replace("egg-white ", "egg-white-pasteurised ")
            .replace("into egg-white", "into egg-white-pasteurised"))
        .material("egg-white-pasteurised")
        .orElseThrow();
    ComputedFormula changed = formula
        .experiment()
        .replacing(2, white)
        .weighingAt(2, Temperature.ofCelsius(5))
        .compute();
    ComputedFormula written =
        read(TEXT.replace("egg-white at 20 °C", "egg-white-pasteurised at 5 °C"));
    assertEquals(water(written), water(changed), 1e-12);
    assertTrue(changed
            .process()
            .last()
            .orElseThrow()
            .left()
            .temperature()
            .high()
            .compareTo(
                formula.process().last().orElseThrow().left().temperature().high())
        < 0);
  }

  /** 1.4 kg of steel at 0.50 kJ/(kg·K) hold 0.7 kJ for each kelvin; common handbook value, from memory. */
  @Test
  void warmsTheBowl() {
    ComputedFormula formula = read(TEXT.replace("0.40 % of finished xanthan-gum\n", "\n"));
    Temperature cold = lowEnd(formula);
    Temperature warm =
        lowEnd(formula.experiment().warming("mixer", Temperature.ofCelsius(60)).compute());
    double kelvin = warm.minus(cold).kelvin();
    // Beside it lie 830 g · 2.5 kJ/(kg·K) = 2.1 kJ/K: 40 K · 0.7/(0.7 + 2.1) = 10 K.
    assertEquals(10, kelvin, 1.5);
  }

  private static Temperature lowEnd(ComputedFormula formula) {
    return formula.process().last().orElseThrow().left().temperature().low();
  }

  private static double water(ComputedFormula formula) {
    return formula
        .composition()
        .map(composition -> composition.water().fraction())
        .toOptional()
        .orElseThrow();
  }
}
