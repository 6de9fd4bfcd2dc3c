package dev.kettlemark.comparison;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.FigureWords;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.comparison.FigureChange.Figure;
import dev.kettlemark.comparison.FigureChange.Group;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.fraction.BigFraction;

/** What can be told of a formula or variant: what is weighed in, and what is made of it. */
final class FormulaFigures {

  private final ComputedFormula formula;
  private final Map<Figure, Shown> figures = new LinkedHashMap<>();

  private FormulaFigures(ComputedFormula formula) {
    this.formula = formula;
  }

  static Map<Figure, Shown> of(ComputedFormula formula) {
    FormulaFigures all = new FormulaFigures(formula);
    all.amounts();
    all.mass();
    return all.figures;
  }

  private void amounts() {
    put(
        Group.AMOUNT,
        "charge",
        formula
            .amounts()
            .charge()
            .map(grams -> Mass.ofGrams(grams.doubleValue()))
            .map(mass -> Shown.number(Display.mass(mass), "grams", mass.grams()))
            .orElseGet(() -> Shown.word("no batch")));
    for (LineAmount line : formula.amounts().lines()) {
      Stage stage = formula.formula().stages().get(line.stage());
      put(
          Group.AMOUNT,
          free(stage.name().value() + ": " + line.line().ingredient().value()),
          Shown.of(line.share(), share -> dose(line, share)));
    }
    for (Stage stage : formula.formula().stages()) {
      for (TakeLine take : stage.takes()) {
        put(
            Group.AMOUNT,
            free(stage.name().value() + ": of " + take.stage().value()),
            Shown.number(
                Display.percent(take.share()), "percent", take.share().doubleValue() * 100));
      }
    }
  }

  /** One ingredient may stand in one stage more than once. */
  private String free(String name) {
    String numbered = name;
    for (int count = 2; figures.containsKey(new Figure(Group.AMOUNT, numbered)); count++) {
      numbered = name + " (" + count + ")";
    }
    return numbered;
  }

  /** {@code 1.05 % · 18.9 g}, and what stands in the text where that is another share. */
  private Shown dose(LineAmount line, BigFraction share) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    numbers.put("percent", share.doubleValue() * 100);
    Optional<BigFraction> grams = formula.amounts().grams(line);
    grams.ifPresent(g -> numbers.put("grams", g.doubleValue()));
    String text = Display.percent(share)
        + grams.map(g -> " · " + Display.mass(Mass.ofGrams(g.doubleValue()))).orElse("");
    boolean sufficient = line.line().measure().value() instanceof Measure.Sufficient;
    return new Shown(text + (sufficient ? " q.s." : ""), numbers, "");
  }

  private void mass() {
    put(
        Group.MASS,
        "yield",
        Shown.of(
            formula.process().yieldShare(),
            share -> Shown.number(Display.estimate(share), "percent", share.percent())));
    put(
        Group.MASS,
        "cooked",
        Shown.of(
            formula.process().cooked(),
            cooked -> formula.isNominal()
                ? Shown.word("no batch")
                : Shown.number(
                    Display.estimate(cooked.mass()), "grams", cooked.mass().grams())));
    Outcome<MassFigures> made = MassFigures.of(formula);
    put(made, "moisture", MassFigures::moisture, FormulaFigures::percent);
    put(
        made,
        "water activity",
        MassFigures::waterActivity,
        band -> band(Display.activity(band), "waterActivity", band, Ratio::fraction));
    put(
        made,
        "water activity when grained",
        MassFigures::grainedWaterActivity,
        band -> band(Display.activity(band), "waterActivity", band, Ratio::fraction));
    put(
        made,
        "glass transition",
        MassFigures::glassTransition,
        band -> band(Display.celsius(band), "celsius", band, t -> t.celsius()));
    put(made, "texture", MassFigures::texture, band -> Shown.word(FigureWords.texture(band)));
    put(
        made,
        "doctor share",
        MassFigures::doctorShare,
        share -> Shown.number(Display.estimate(share), "percent", share.percent()));
    put(
        made,
        "sweetness",
        MassFigures::sweetness,
        band -> band(Display.number(band, 2), "ofSucrose", band, Ratio::fraction));
    put(
        made,
        "density",
        MassFigures::density,
        band ->
            band(Display.density(band), "gramsPerMillilitre", band, d -> d.gramsPerMillilitre()));
    put(
        made,
        "energy",
        MassFigures::europeanKilocalories,
        kcal ->
            Shown.number(Display.fixed(kcal, 0) + " kcal/100 g", "kilocaloriesPer100Grams", kcal));
  }

  static Shown percent(Band<Ratio> band) {
    return band(Display.estimate(band), "percent", band, Ratio::percent);
  }

  static <T extends Comparable<? super T>> Shown band(
      String text, String unit, Band<T> band, Function<? super T, Double> number) {
    return Shown.numbers(text, unit, number.apply(band.low()), number.apply(band.high()));
  }

  private <T> void put(
      Outcome<MassFigures> made,
      String name,
      Function<MassFigures, Outcome<T>> figure,
      Function<T, Shown> shown) {
    put(Group.MASS, name, Shown.of(made.flatMap(figure), shown));
  }

  private void put(Group group, String name, Shown shown) {
    figures.put(new Figure(group, name), shown);
  }
}
