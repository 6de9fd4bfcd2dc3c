package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Derived;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import java.util.List;
import java.util.stream.Stream;

/**
 * An ingredient that foams, where a formula weighs it in.
 *
 * @param line the amount
 * @param stage the name of the stage that weighs it in
 * @param ingredient its pantry entry
 */
record Foaming(AmountLine line, String stage, Ingredient ingredient) {

  private static final Derived<List<Foaming>> ALL = Derived.by(Foaming::each);

  static List<Foaming> of(ComputedFormula formula) {
    return ALL.of(formula);
  }

  private static List<Foaming> each(ComputedFormula formula) {
    return formula.formula().stages().stream()
        .flatMap(stage -> stage.amounts().stream()
            .flatMap(line -> foaming(formula, line)
                .map(found -> new Foaming(line, stage.name().value(), found))))
        .toList();
  }

  private static Stream<Ingredient> foaming(ComputedFormula formula, AmountLine line) {
    return formula.material(line.ingredient().value()).stream()
        .flatMap(material -> material.ingredient().stream())
        .filter(ingredient -> ingredient.hasRole("whipping"));
  }

  String name() {
    return line.ingredient().value();
  }
}
