package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.BasisWeights;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.CookedWeight;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.fraction.BigFraction;

/**
 * How much some amount lines of a formula are of one basis.
 *
 * @param basis what it is a share of, in words
 * @param share of the lines together
 * @param weight what the basis itself weighs, with the batch or the nominal charge
 */
record BasisShare(String basis, Ratio share, Mass weight) {

  /** A stage that holds so much of the charge says nothing that the charge does not say. */
  private static final double ALL = 0.9999;

  /** The lines' share of every basis that the formula knows: what is weighed in, made, declared or held. */
  static List<BasisShare> all(ComputedFormula formula, List<LineAmount> lines) {
    List<BasisShare> shares = new ArrayList<>();
    of(formula, lines, new Basis.Charge()).ifPresent(shares::add);
    of(formula, lines, new Basis.Finished()).ifPresent(shares::add);
    for (BasisDefinition basis : formula.formula().bases()) {
      named(formula, lines, basis.name().value()).ifPresent(shares::add);
    }
    for (Stage stage : formula.formula().stages()) {
      inStage(formula, lines, stage.name().value()).ifPresent(shares::add);
    }
    ofConstituent(formula, lines, "all water weighed in", Composition::water)
        .ifPresent(shares::add);
    ofConstituent(formula, lines, "all sugars weighed in", Composition::sugars)
        .ifPresent(shares::add);
    return shares;
  }

  /** The lines' share of one basis; empty where the formula knows no such basis. */
  static Optional<BasisShare> of(ComputedFormula formula, List<LineAmount> lines, Basis basis) {
    if (basis instanceof Basis.Named named) {
      return named(formula, lines, named.name().value());
    }
    return basis instanceof Basis.Charge
        ? of("charge", grams(formula, lines), charge(formula))
        : formula
            .process()
            .cooked()
            .toOptional()
            .map(CookedWeight::mass)
            .flatMap(cooked -> of("finished", grams(formula, lines), cooked));
  }

  private static Optional<BasisShare> named(
      ComputedFormula formula, List<LineAmount> lines, String name) {
    return BasisWeights.of(formula.formula(), name)
        .map(
            weights -> charge(formula).times(formula.amounts().weighted(weights).doubleValue()))
        .flatMap(weight -> of(Markdown.code(name), grams(formula, lines), weight));
  }

  /** How much of a stage the lines are as far as they are in it; empty where they are not. */
  private static Optional<BasisShare> inStage(
      ComputedFormula formula, List<LineAmount> lines, String stage) {
    Amounts amounts = formula.amounts();
    Optional<List<BigFraction>> weights = BasisWeights.of(formula.formula(), stage);
    if (weights.isEmpty() || formula.formula().basis(stage).isPresent()) {
      return Optional.empty();
    }
    double inside = 0;
    for (int i = 0; i < amounts.lines().size(); i++) {
      if (lines.contains(amounts.lines().get(i))) {
        BigFraction share = amounts.lines().get(i).share().orElse(BigFraction.ZERO);
        inside += share.multiply(weights.get().get(i)).doubleValue();
      }
    }
    Mass weight = charge(formula).times(amounts.weighted(weights.get()).doubleValue());
    boolean isPart = weight.compareTo(charge(formula).times(ALL)) < 0;
    return inside > 0 && isPart
        ? of("stage " + Markdown.code(stage), charge(formula).times(inside), weight)
        : Optional.empty();
  }

  private static Optional<BasisShare> ofConstituent(
      ComputedFormula formula,
      List<LineAmount> lines,
      String words,
      Function<Composition, Ratio> share) {
    Outcome<Mass> total = Outcome.known(Mass.ZERO);
    for (LineAmount line : formula.amounts().lines()) {
      Mass mass = grams(formula, List.of(line));
      Optional<Outcome<Composition>> composition =
          formula.material(line.line().ingredient().value()).map(Material::composition);
      if (composition.isEmpty()) {
        return Optional.empty();
      }
      Outcome<Mass> part = composition.get().map(share).map(mass::times);
      total = Outcome.both(total, part, Mass::plus);
    }
    return total.toOptional().flatMap(weight -> of(words, grams(formula, lines), weight));
  }

  private static Optional<BasisShare> of(String basis, Mass part, Mass whole) {
    return whole.grams() > 0
        ? Optional.of(new BasisShare(basis, part.dividedBy(whole), whole))
        : Optional.empty();
  }

  private static Mass charge(ComputedFormula formula) {
    return formula
        .amounts()
        .charge()
        .map(WrittenFormula::mass)
        .orElse(ComputedFormula.NOMINAL_CHARGE);
  }

  private static Mass grams(ComputedFormula formula, List<LineAmount> lines) {
    BigFraction share = lines.stream()
        .map(line -> line.share().orElse(BigFraction.ZERO))
        .reduce(BigFraction.ZERO, BigFraction::add);
    return charge(formula).times(share.doubleValue());
  }
}
