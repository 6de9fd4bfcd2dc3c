package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Stage;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What a basis of liquid would be the sum of, for the stage in which it is wanted. */
final class BasisProposal {

  /** A material of so much water counts as a liquid; common practice, no source. */
  private static final double MOSTLY_WATER = 0.5;

  private BasisProposal() {}

  /**
   * The members of a basis, as they are written behind {@code =}.
   *
   * @param stage in which the line stands that wants the basis
   * @return empty where the stage holds no liquid
   */
  static Optional<String> members(ComputedFormula computed, Stage stage) {
    Formula formula = computed.formula();
    Set<String> elsewhere = formula.stages().stream()
        .filter(other -> !other.name().value().equals(stage.name().value()))
        .flatMap(other -> other.amounts().stream())
        .map(line -> line.ingredient().value())
        .collect(Collectors.toSet());
    String liquids = stage.amounts().stream()
        .map(line -> line.ingredient().value())
        .filter(name -> isLiquid(computed, name))
        .distinct()
        .map(name -> elsewhere.contains(name) ? name + " in " + stage.name().value() : name)
        .collect(Collectors.joining(", "));
    return Optional.of(liquids).filter(names -> !names.isEmpty());
  }

  private static boolean isLiquid(ComputedFormula computed, String name) {
    return computed
        .material(name)
        .flatMap(material -> material.composition().toOptional())
        .filter(composition -> composition.fraction(Component.WATER) >= MOSTLY_WATER)
        .isPresent();
  }
}
