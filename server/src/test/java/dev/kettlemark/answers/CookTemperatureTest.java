package dev.kettlemark.answers;

import static dev.kettlemark.answers.Workbench.because;
import static dev.kettlemark.answers.Workbench.figure;
import static dev.kettlemark.answers.Workbench.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CookTemperatureTest {

  private static final String CANDY = """
      formula candy
        percent of charge
        batch 1000 g
      stage syrup
        70.00 % white-sugar
        q.s.    water
        cook    to 130 °C
      """;

  private static Wish stageMoisture(double percent) {
    return new Wish.StageMoisture(Ratio.ofPercent(percent));
  }

  /**
   * Sucrose at one atmosphere. Trade pairs of stage and solids: soft ball 112–115 °C with 85 %, firm
   * ball 118–120 with 87, hard ball 121–130 with 92, soft crack 132–143 with 95; two published
   * reference pages. The boiling model meets them within 2 percent points.
   */
  @ParameterizedTest
  @CsvSource({"15, 112, 115", "13, 116, 120", "8, 121, 130", "5, 132, 143"})
  void liesInTheTradesRangeOfTheSugarStage(double water, double low, double high) {
    Answer answer = known(
        CookTemperature.of(Workbench.of(CANDY).formula("candy"), "syrup", stageMoisture(water)));
    double celsius = figure(answer, "cook-temperature");
    assertTrue(celsius >= low && celsius <= high, "cook to " + celsius);
    assertEquals(water, figure(answer, "water-in-stage"), 0.03);
  }

  /** Candy-range table: 95 % solids boil at 140 °C, 90 % at 123 °C; McGee 1984, from memory; ±2 °C. */
  @ParameterizedTest
  @CsvSource({"5, 140", "10, 123"})
  void agreesWithTheCandyTable(double water, double published) {
    Answer answer = known(
        CookTemperature.of(Workbench.of(CANDY).formula("candy"), "syrup", stageMoisture(water)));
    assertEquals(published, figure(answer, "cook-temperature"), 2);
    Value target = answer.value("cook-temperature").orElseThrow();
    assertTrue(target.low() < target.figure() && target.figure() < target.high());
  }

  @Test
  void tellsWhatCanBeReached() {
    String because = because(
        CookTemperature.of(Workbench.of(CANDY).formula("candy"), "syrup", stageMoisture(40)));
    assertTrue(because.contains("30.0 % to 0.5 % water in what the stage leaves"), because);
    assertTrue(because.contains("never 40.0 %"), because);
  }

  @Test
  void tellsWhichStagesCook() {
    ComputedFormula formula = Workbench.of(CANDY).formula("candy");
    assertEquals(
        "no step of `pot` cooks to a temperature; those that do are in `syrup`",
        because(CookTemperature.of(formula, "pot", stageMoisture(5))));
  }

  @Test
  void isUnknownWhereTheCompositionIs() {
    ComputedFormula formula =
        Workbench.of(CANDY.replace("white-sugar", "moon-dust")).formula("candy");
    assertEquals(
        "nobody has described `moon-dust`",
        because(CookTemperature.of(formula, "syrup", stageMoisture(5))));
  }

  @Test
  void refusesAShareBeyondTheWhole() {
    ComputedFormula formula = Workbench.of(CANDY).formula("candy");
    assertTrue(because(CookTemperature.of(formula, "syrup", stageMoisture(130)))
        .contains("between nothing and all"));
  }

  /** A bare cook has no temperature yet; the answer gives it one. */
  @Test
  void answersForACookWithoutATarget() {
    ComputedFormula formula =
        Workbench.of(CANDY.replace("cook    to 130 °C", "cook")).formula("candy");
    assertEquals(
        123.0,
        figure(known(CookTemperature.of(formula, "syrup", stageMoisture(10))), "cook-temperature"),
        2);
  }

  /**
   * A mass of sucrose with 15 % glucose of the dry solids is a glass when cooked to 150 °C and chews
   * at 127 °C; common practice, no source.
   */
  @Test
  void findsTheBite() {
    String text = """
        formula candy
          percent of charge
          batch 1000 g
        stage syrup
          59.50 % white-sugar
          11.54 % dextrose
          q.s.    water
          cook    to 130 °C
        """;
    ComputedFormula formula = Workbench.of(text).formula("candy");
    double brittle = figure(
        known(CookTemperature.of(formula, "syrup", new Wish.Texture(Wish.Bite.BRITTLE))),
        "cook-temperature");
    double chewy = figure(
        known(CookTemperature.of(formula, "syrup", new Wish.Texture(Wish.Bite.CHEWY))),
        "cook-temperature");
    assertEquals(150, brittle, 4);
    assertEquals(127, chewy, 4);
    // The same temperatures put back give the same bites.
    assertEquals(-10, roomAboveGlass(formula, brittle), 0.3);
    assertEquals(25, roomAboveGlass(formula, chewy), 0.3);
  }

  private static double roomAboveGlass(ComputedFormula formula, double celsius) {
    ComputedFormula after = formula
        .experiment()
        .cooking(new StepPlace(0, 0), Temperature.ofCelsius(celsius))
        .compute();
    return known(new Wish.Texture(Wish.Bite.CHEWY).figure(after, 0));
  }

  /** Whatever a sample gives is found again from its result, to the tenth of a degree. */
  @Test
  void findsTheTemperatureThatEachSampleIsWrittenWith() {
    Snapshot snapshot = Snapshot.of(Library.of(SampleTexts.libraryWithPantry()));
    int cooks = 0;
    for (Document document : SampleTexts.library()) {
      for (Entry entry : document.entries()) {
        var formula = Formulas.computed(snapshot, entry);
        if (formula.isPresent()) {
          for (StepPlace place : CookPlaces.of(formula.get())) {
            assertFindsItself(formula.get(), place);
            cooks++;
          }
        }
      }
    }
    assertTrue(cooks >= 10, "only " + cooks + " cooks");
  }

  private static void assertFindsItself(ComputedFormula formula, StepPlace place) {
    double written = Boiling.target(CookPlaces.step(formula, place).step())
        .map(band -> (band.low().celsius() + band.high().celsius()) / 2)
        .orElseThrow();
    String name = formula.formula().name().value();
    List<Wish> wishes = List.of(
        new Wish.StageMoisture(
            Ratio.ofFraction(known(stageMoisture(1).figure(formula, place.stage())))),
        new Wish.FinishedMoisture(Ratio.ofFraction(
            known(new Wish.FinishedMoisture(Ratio.ONE).figure(formula, place.stage())))));
    for (Wish wish : wishes) {
      Answer answer = known(CookTemperature.of(formula, place, wish));
      assertEquals(written, figure(answer, "cook-temperature"), 0.051, name + ": " + wish);
    }
    new Wish.Activity(Ratio.ONE)
        .figure(formula, place.stage())
        .ifKnown(activity -> assertEquals(
            written,
            figure(
                known(CookTemperature.of(
                    formula, place, new Wish.Activity(Ratio.ofFraction(activity)))),
                "cook-temperature"),
            0.051,
            name));
  }
}
