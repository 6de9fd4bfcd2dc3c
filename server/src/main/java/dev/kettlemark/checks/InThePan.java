package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.hipparchus.fraction.BigFraction;

/**
 * What was weighed into the pan of a cook, by way of earlier stages too.
 *
 * @param lines in the order written
 */
record InThePan(List<Amounts.LineAmount> lines) {

  static InThePan of(ComputedFormula formula, CookStep cook) {
    int stage = formula.formula().stages().indexOf(cook.stage());
    Set<String> names = new HashSet<>();
    cook.result().before().forEach(parcel -> names.addAll(parcel.names()));
    List<Amounts.LineAmount> found = new ArrayList<>();
    collect(formula, stage, names::contains, found);
    return new InThePan(List.copyOf(found));
  }

  private static void collect(
      ComputedFormula formula,
      int stage,
      Predicate<String> counts,
      List<Amounts.LineAmount> found) {
    List<Stage> stages = formula.formula().stages();
    for (TakeLine take : stages.get(stage).takes()) {
      if (counts.test(take.stage().value())) {
        for (int earlier = stage - 1; earlier >= 0; earlier--) {
          if (stages.get(earlier).name().value().equals(take.stage().value())) {
            collect(formula, earlier, name -> true, found);
            break;
          }
        }
      }
    }
    formula.amounts().lines().stream()
        .filter(line -> line.stage() == stage && counts.test(name(line)))
        .forEach(found::add);
  }

  static String name(Amounts.LineAmount line) {
    return line.line().ingredient().value();
  }

  /** The lines of ingredients that pass. */
  List<Amounts.LineAmount> of(ComputedFormula formula, Predicate<Ingredient> which) {
    return lines.stream()
        .filter(line -> formula
            .material(name(line))
            .flatMap(Material::ingredient)
            .filter(which)
            .isPresent())
        .toList();
  }

  /** How much of a component lines bring, as a share of the charge; what is unknown counts nothing. */
  static double share(
      ComputedFormula formula, List<Amounts.LineAmount> lines, Component component) {
    return lines.stream()
        .mapToDouble(line -> line.share().map(BigFraction::doubleValue).orElse(0.0)
            * formula
                .material(name(line))
                .flatMap(material -> material.composition().toOptional())
                .map(composition -> composition.fraction(component))
                .orElse(0.0))
        .sum();
  }
}
