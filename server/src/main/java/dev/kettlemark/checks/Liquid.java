package dev.kettlemark.checks;

import dev.kettlemark.analysis.BasisWeights;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;

/**
 * How much liquid a formula has, as a share of the charge.
 *
 * <p>The liquid is the basis that the formula declares under that name. Without one it is all water that
 * the formula weighs in, whatever brings it: the most that a gum can meet, so that its dose is rather told
 * too low.
 */
final class Liquid {

  /** Sugars and powders hold less water than this as they are; an own choice. */
  private static final double DRIEST = 0.02;

  private Liquid() {}

  static double of(ComputedFormula computed, String name) {
    return isDeclared(computed, name)
        ? BasisWeights.of(computed.formula(), name)
            .map(weights -> computed.amounts().weighted(weights).doubleValue())
            .orElse(0.0)
        : water(computed);
  }

  /** Whether there is something liquid at all; the moisture of a dry mix dissolves nothing. */
  static boolean isWet(ComputedFormula computed, String name) {
    return isDeclared(computed, name) || water(computed) >= DRIEST;
  }

  static boolean isDeclared(ComputedFormula computed, String name) {
    return computed.formula().basis(name).isPresent();
  }

  /** An ingredient of unknown composition counts as water, for the same reason. */
  private static double water(ComputedFormula computed) {
    return computed.amounts().lines().stream()
        .mapToDouble(line -> line.share().map(s -> s.doubleValue()).orElse(0.0)
            * computed
                .material(line.line().ingredient().value())
                .flatMap(material -> material.composition().toOptional())
                .map(composition -> composition.fraction(Component.WATER))
                .orElse(1.0))
        .sum();
  }
}
