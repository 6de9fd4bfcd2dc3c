package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Derived;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Stage;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.hipparchus.fraction.BigFraction;

/**
 * What was weighed into the pan of a cook, by way of earlier stages too.
 *
 * @param lines in the order written
 */
record InThePan(List<Amounts.LineAmount> lines) {

  private static final Derived<Map<CookStep, InThePan>> PANS =
      Derived.by(formula -> new ConcurrentHashMap<>());

  static InThePan of(ComputedFormula formula, CookStep cook) {
    return PANS.of(formula).computeIfAbsent(cook, key -> weighed(formula, key));
  }

  private static InThePan weighed(ComputedFormula formula, CookStep cook) {
    List<Stage> stages = formula.formula().stages();
    int last = stages.indexOf(cook.stage());
    Set<String> here = new HashSet<>();
    cook.result().before().forEach(parcel -> here.addAll(parcel.names()));
    Set<String> wanted = new HashSet<>(here);
    Set<Integer> whole = new HashSet<>();
    for (int stage = last - 1; stage >= 0 && !wanted.isEmpty(); stage--) {
      if (wanted.remove(stages.get(stage).name().value())) {
        whole.add(stage);
        stages.get(stage).takes().forEach(take -> wanted.add(take.stage().value()));
      }
    }
    return new InThePan(formula.amounts().lines().stream()
        .filter(line ->
            whole.contains(line.stage()) || (line.stage() == last && here.contains(name(line))))
        .toList());
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
