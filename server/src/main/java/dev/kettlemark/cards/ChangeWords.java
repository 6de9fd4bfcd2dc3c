package dev.kettlemark.cards;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.answers.Change;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetUnit;
import java.util.Optional;

/** What one change of a formula is, as an instruction to whoever makes it. */
final class ChangeWords {

  private ChangeWords() {}

  static Phrase of(Change change, ComputedFormula formula) {
    if (change instanceof Change.Cook cook) {
      return Phrase.sentence(
          "change.cook",
          Phrase.given(stage(formula, cook.place().stage())),
          celsius("change.cook", cook.target().celsius()));
    }
    if (change instanceof Change.Weigh weigh) {
      return Phrase.sentence(
          "change.weigh",
          Phrase.given(line(formula, weigh.line())),
          Phrase.given(weigh.figure().shown()));
    }
    if (change instanceof Change.Replace replace) {
      return Phrase.sentence(
          "change.replace",
          Phrase.given(line(formula, replace.line())),
          Phrase.given(title(replace.material().ingredient(), replace.material().name())),
          Phrase.given(replace.figure().shown()));
    }
    if (change instanceof Change.Add add) {
      return Phrase.sentence(
          "change.add",
          Phrase.given(title(add.material().ingredient(), add.material().name())),
          Phrase.given(add.figure().shown()),
          Phrase.given(stage(formula, add.stage())));
    }
    Change.Warm warm = (Change.Warm) change;
    return Phrase.sentence(
        "change.warm",
        Phrase.given(warm.vessel()),
        celsius("change.warm", warm.temperature().celsius()));
  }

  private static Phrase celsius(String id, double celsius) {
    return Phrase.value(SheetFigure.exact(id, SheetUnit.CELSIUS, celsius, 1));
  }

  private static String stage(ComputedFormula formula, int index) {
    return formula.formula().stages().get(index).name().value();
  }

  private static String line(ComputedFormula formula, int index) {
    String name = formula.amounts().lines().get(index).line().ingredient().value();
    return title(formula.material(name).flatMap(material -> material.ingredient()), name);
  }

  private static String title(Optional<Ingredient> ingredient, String name) {
    return ingredient.map(Ingredient::shownName).orElse(name);
  }
}
