package dev.kettlemark.analysis;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.fraction.BigFraction;

/**
 * Computes one formula: what its names mean, its exact amounts, and what its stages make of them.
 *
 * <p>Percentages of the finished weight depend on the yield, and the yield on the amounts. They are
 * solved by bracketing the yield; for a formula that boils nothing the yield is one and nothing is
 * searched.
 */
final class FormulaComputation {

  private static final double YIELD_ACCURACY = 1e-9;
  private static final int MOST_TRIALS = 100;

  private final Entry entry;
  private final ResolvedFormula resolved;
  private final Formula formula;
  private final Scope scope;
  private final Question<Optional<Entry>> house;
  private final Map<String, Material> materials = new HashMap<>();

  /**
   * Prepares a computation.
   *
   * @param house where it is made
   */
  FormulaComputation(
      Entry entry, ResolvedFormula resolved, Scope scope, Question<Optional<Entry>> house) {
    this.entry = entry;
    this.resolved = resolved;
    this.formula = resolved.formula();
    this.scope = scope;
    this.house = house;
  }

  ComputedFormula compute() {
    Optional<List<String>> circle =
        entry.declaration().flatMap(declaration -> Uses.circle(declaration, scope));
    boolean tooDeep = entry
        .declaration()
        .filter(declaration -> Uses.isTooDeep(declaration, scope))
        .isPresent();
    for (AmountLine line : formula.amounts()) {
      materials.computeIfAbsent(line.ingredient().value(), name -> material(name, circle, tooDeep));
    }
    Kitchen kitchen = Kitchen.of(house());
    Amounts amounts = solve(BigFraction.ONE);
    ProcessResult process = run(amounts, kitchen);
    if (hasShareOfFinished()) {
      amounts = solve(finishedPerCharge(kitchen, process));
      process = run(amounts, kitchen);
    }
    return new ComputedFormula(resolved, amounts, process, materials, kitchen);
  }

  private Optional<House> house() {
    return scope
        .ask(house)
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof House house ? Optional.of(house) : Optional.empty());
  }

  private Material material(String name, Optional<List<String>> circle, boolean tooDeep) {
    Optional<Declaration> declaration =
        scope.ask(Lookup.of(Kind.MATERIAL, name)).flatMap(Entry::declaration);
    if (declaration.isEmpty()) {
      return Material.unknown(
          name, Reason.MISSING_COMPOSITION, "nobody has described `" + name + "`");
    }
    if (declaration.get() instanceof Ingredient ingredient) {
      return Material.of(ingredient);
    }
    if (circle.filter(path -> path.contains(name)).isPresent()) {
      return Material.unknown(
          name, Reason.CONTRADICTION, "`" + name + "` is made of this formula itself");
    }
    if (tooDeep) {
      return Material.unknown(
          name,
          Reason.DEPENDS_ON_UNKNOWN,
          "formulas go on inside `" + name + "` for more than " + Uses.MOST_LEVELS + " levels");
    }
    return scope
        .ask(Formulas.computed(name))
        .map(formula -> Material.of(name, formula))
        .orElseGet(() -> Material.unknown(
            name, Reason.DEPENDS_ON_UNKNOWN, "`" + name + "` cannot be worked out"));
  }

  private Amounts solve(BigFraction finishedPerCharge) {
    return AmountSystem.solve(formula, this::gramsByVolume, finishedPerCharge);
  }

  private Outcome<BigFraction> gramsByVolume(AmountLine line) {
    if (!(line.measure().value() instanceof Measure.Capacity capacity)) {
      return Outcome.unknown(
          Reason.MISSING_FIGURE,
          "nobody has said what one `" + line.ingredient().value() + "` weighs");
    }
    Optional<Density> density = Optional.ofNullable(
            materials.get(line.ingredient().value()))
        .flatMap(Material::ingredient)
        .flatMap(Ingredient::density);
    return density
        .map(d -> Outcome.known(exact(d.gramsPerMillilitre()).multiply(capacity.millilitres())))
        .orElseGet(() -> Outcome.unknown(
            Reason.MISSING_FIGURE,
            "the density of `" + line.ingredient().value() + "` is not known"));
  }

  private ProcessResult run(Amounts amounts, Kitchen kitchen) {
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
  private BigFraction finishedPerCharge(Kitchen kitchen, ProcessResult first) {
    if (first.evaporated().grams() == 0) {
      return BigFraction.ONE;
    }
    try {
      double found = new BracketingNthOrderBrentSolver(YIELD_ACCURACY, 5)
          .solve(
              MOST_TRIALS,
              trial -> run(solve(exact(trial)), kitchen)
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

  private static BigFraction exact(double value) {
    BigDecimal decimal = BigDecimal.valueOf(value);
    return decimal.scale() <= 0
        ? new BigFraction(decimal.toBigIntegerExact())
        : new BigFraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
  }
}
