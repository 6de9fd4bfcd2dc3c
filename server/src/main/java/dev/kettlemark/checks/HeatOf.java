package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Temperature;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The heat that an ingredient goes through on its way into what a formula makes. */
final class HeatOf {

  private HeatOf() {}

  /** The hottest that an ingredient certainly gets, in whatever mass it lies; empty where no step touches it. */
  static Optional<Temperature> hottest(ComputedFormula formula, String ingredient) {
    Set<String> carriers = carriers(formula, ingredient);
    return formula.process().stages().stream()
        .flatMap(HeatOf::masses)
        .filter(mass -> mass.names().stream().anyMatch(carriers::contains))
        .map(mass -> mass.temperature().low())
        .max(Temperature::compareTo);
  }

  /** The ingredient, and every stage that holds it. */
  static Set<String> carriers(ComputedFormula formula, String ingredient) {
    Set<String> carriers = new HashSet<>(Set.of(ingredient));
    for (Stage stage : formula.formula().stages()) {
      boolean holds = Stream.concat(
              stage.amounts().stream().map(line -> line.ingredient().value()),
              stage.takes().stream().map(take -> take.stage().value()))
          .anyMatch(carriers::contains);
      if (holds) {
        carriers.add(stage.name().value());
      }
    }
    return carriers;
  }

  private static Stream<StageParcel> masses(StageResult stage) {
    return Stream.concat(
        stage.steps().stream().flatMap(step -> step.after().stream()), Stream.of(stage.left()));
  }
}
