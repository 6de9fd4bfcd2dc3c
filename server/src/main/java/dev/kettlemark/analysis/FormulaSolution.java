package dev.kettlemark.analysis;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.fraction.BigFraction;

/**
 * Solves a formula whose names are known: its exact amounts, and what its stages make of them.
 *
 * <p>Percentages of the finished weight depend on the yield, and the yield on the amounts. They are
 * solved by bracketing the yield; for a formula that boils nothing the yield is one and nothing is
 * searched.
 */
final class FormulaSolution {

  private static final double YIELD_ACCURACY = 1e-9;
  private static final int MOST_TRIALS = 100;

  private final Formula formula;
  private final Map<String, Material> materials;
  private final Kitchen kitchen;

  private FormulaSolution(Formula formula, Map<String, Material> materials, Kitchen kitchen) {
    this.formula = formula;
    this.materials = materials;
    this.kitchen = kitchen;
  }

  /**
   * Solves a formula in a kitchen.
   *
   * @param materials what the names of the amount lines mean
   */
  static ComputedFormula of(
      ResolvedFormula resolved, Map<String, Material> materials, Kitchen kitchen) {
    FormulaSolution solution = new FormulaSolution(resolved.formula(), materials, kitchen);
    Amounts amounts = solution.solve(BigFraction.ONE);
    ProcessResult process = solution.run(amounts);
    if (solution.hasShareOfFinished()) {
      amounts = solution.solve(solution.finishedPerCharge(process));
      process = solution.run(amounts);
    }
    return new ComputedFormula(resolved, amounts, process, materials, kitchen);
  }

  private Amounts solve(BigFraction finishedPerCharge) {
    return AmountSystem.solve(formula, this::gramsByVolume, finishedPerCharge);
  }

  private Outcome<BigFraction> gramsByVolume(AmountLine line) {
    if (!(line.measure().value() instanceof Measure.Capacity capacity)) {
      return Outcome.unknown(
          Reason.MISSING_FIGURE,
          "nobody has said what one `%s` weighs",
          line.ingredient().value());
    }
    Optional<Density> density = Optional.ofNullable(
            materials.get(line.ingredient().value()))
        .flatMap(Material::ingredient)
        .flatMap(Ingredient::density);
    return density
        .map(d -> Outcome.known(exact(d.gramsPerMillilitre()).multiply(capacity.millilitres())))
        .orElseGet(() -> Outcome.unknown(
            Reason.MISSING_FIGURE,
            "the density of `%s` is not known",
            line.ingredient().value()));
  }

  private ProcessResult run(Amounts amounts) {
    double charge = amounts
        .charge()
        .map(BigFraction::doubleValue)
        .orElse(ComputedFormula.NOMINAL_CHARGE.grams());
    return KitchenRun.of(formula, amounts, materials, kitchen, Mass.ofGrams(charge));
  }

  private boolean hasShareOfFinished() {
    return formula.amounts().stream()
        .anyMatch(line -> line.measure().value() instanceof Measure.Share share
            && formula.basisOf(share) instanceof Basis.Finished);
  }

  /** The yield at which the amounts and what becomes of them agree. */
  private BigFraction finishedPerCharge(ProcessResult first) {
    if (first.evaporated().grams() == 0) {
      return BigFraction.ONE;
    }
    try {
      double found = new BracketingNthOrderBrentSolver(YIELD_ACCURACY, 5)
          .solve(
              MOST_TRIALS,
              trial -> run(solve(exact(trial)))
                      .yieldShare()
                      .map(share -> share.fraction())
                      .orElse(1.0)
                  - trial,
              0.05,
              1.0);
      return exact(found);
    } catch (MathRuntimeException noYield) {
      return BigFraction.ONE;
    }
  }

  static BigFraction exact(double value) {
    BigDecimal decimal = BigDecimal.valueOf(value);
    return decimal.scale() <= 0
        ? new BigFraction(decimal.toBigIntegerExact())
        : new BigFraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
  }
}
