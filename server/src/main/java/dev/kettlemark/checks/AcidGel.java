package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Ratio;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * A mass with an agent that sets in acid and sugar only, such as high methoxyl pectin.
 *
 * @param agent the agent
 * @param acid the share of acid in the charge, buffer salts apart; empty where something is unknown
 * @param solids soluble solids in the mass, within the slack of the boiling model; empty likewise
 */
record AcidGel(Agent agent, Optional<Ratio> acid, Optional<Band<Ratio>> solids) {

  static Optional<AcidGel> of(ComputedFormula formula, Agent agent) {
    return Optional.of(agent)
        .filter(found -> found.traits().needs().contains("acid"))
        .flatMap(found -> formula
            .process()
            .last()
            .map(StageResult::left)
            .map(mass -> new AcidGel(found, acid(formula), solids(mass))));
  }

  /** What a buffer salt holds of an acid makes nothing sour. */
  private static Optional<Ratio> acid(ComputedFormula formula) {
    double sum = 0;
    for (Amounts.LineAmount line : formula.amounts().lines()) {
      Optional<Material> material = formula.material(line.line().ingredient().value());
      Optional<Composition> composition =
          material.flatMap(found -> found.composition().toOptional());
      if (composition.isEmpty() || !line.share().isKnown()) {
        return Optional.empty();
      }
      boolean isBuffer = material
          .flatMap(Material::ingredient)
          .filter(ingredient -> ingredient.hasRole("mineral"))
          .isPresent();
      double share = line.share().map(BigFraction::doubleValue).orElse(0.0);
      sum += isBuffer ? 0 : share * composition.get().fraction(Component.ACID);
    }
    return Optional.of(Ratio.ofFraction(sum));
  }

  private static Optional<Band<Ratio>> solids(StageParcel mass) {
    return mass.portion().toOptional().map(portion -> {
      Composition composition = portion.composition();
      double sweet = composition.sweetSolids().fraction();
      double water = composition.water().fraction();
      double slack = portion.mass().grams() > 0
          ? Math.min(water, mass.slack().grams() / portion.mass().grams())
          : 0;
      return Band.spanning(share(sweet, water + slack), share(sweet, water - slack));
    });
  }

  private static Ratio share(double sweet, double water) {
    return sweet + water > 0 ? Ratio.ofFraction(sweet / (sweet + water)) : Ratio.ZERO;
  }
}
