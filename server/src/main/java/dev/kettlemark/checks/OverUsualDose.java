package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.UseRange;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports more salt, acid, mineral, leavening, colour or essence than anybody uses.
 *
 * <p>What gels, thickens and foams has rules of its own, and a flavour that is food in its own right,
 * such as cocoa, may be as much as somebody likes.
 */
public final class OverUsualDose implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "over-usual-dose", "something that acts by a small dose is far above its usual dose");

  private static final List<String> STRONG =
      List.of("salt", "acidulant", "mineral", "leavening", "colour");

  private static final Set<String> FOOD = Set.of(
      "sweetening",
      "fat",
      "dairy",
      "nut",
      "seed",
      "fruit",
      "inclusion",
      "protein",
      "coating",
      "doctor",
      "bulking",
      "starch",
      "gelling",
      "thickening",
      "whipping");

  /** From so many times the usual on it is an error. */
  private static final double CANNOT_BE_MEANT = 5;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(formula -> !isPremix(formula))
        .map(formula -> check(subject, formula))
        .orElse(List.of());
  }

  /** A dry blend is weighed into something else, and there its doses count. */
  private static boolean isPremix(ComputedFormula formula) {
    List<Statement> steps = formula.formula().steps().toList();
    return !steps.isEmpty()
        && steps.stream().allMatch(step -> step.is("blend") || step.is("sift") || step.is("weigh"));
  }

  private static List<Finding> check(Subject subject, ComputedFormula formula) {
    Map<String, Double> shares = new HashMap<>();
    for (Amounts.LineAmount line : formula.amounts().lines()) {
      double share = line.share().map(BigFraction::doubleValue).orElse(0.0);
      shares.merge(InThePan.name(line), share, Double::sum);
    }
    return formula.amounts().lines().stream()
        .filter(line -> !formula.formula().inherits(line.line().span()))
        .flatMap(line ->
            check(subject, formula, line, shares.getOrDefault(InThePan.name(line), 0.0)).stream())
        .toList();
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, Amounts.LineAmount line, double share) {
    return formula
        .material(InThePan.name(line))
        .flatMap(Material::ingredient)
        .filter(OverUsualDose::isStrong)
        .flatMap(ingredient -> ingredient.uses().stream().findFirst())
        .filter(use -> !(use.basis() instanceof Basis.Named))
        .flatMap(use -> dose(formula, share, use)
            .filter(dose -> dose.compareTo(use.high()) > 0)
            .map(dose -> finding(subject, formula, line, use, dose)));
  }

  private static boolean isStrong(Ingredient ingredient) {
    boolean isFood = ingredient.roles().stream().anyMatch(FOOD::contains)
        || (ingredient.hasRole("colour") && ingredient.hasRole("flavour"));
    return !isFood
        && (STRONG.stream().anyMatch(ingredient::hasRole) || ingredient.hasTrait("volatile"));
  }

  private static Optional<Ratio> dose(ComputedFormula formula, double share, UseRange use) {
    Optional<Double> whole = use.basis() instanceof Basis.Finished
        ? formula.process().yieldShare().toOptional().map(Ratio::fraction)
        : Optional.of(1.0);
    return whole.filter(of -> of > 0).map(of -> Ratio.ofFraction(share / of));
  }

  private static Finding finding(
      Subject subject, ComputedFormula formula, Amounts.LineAmount line, UseRange use, Ratio dose) {
    Finding finding = OtherPlace.fact(
        INFO.at(
                line.line().measure().span(),
                "%s of `%s` is %s of %s, usual is %s",
                Columns.shown(line.line().measure().span().of(subject.text())),
                InThePan.name(line),
                Display.percent(dose),
                use.basis().words(),
                Display.range(use.low(), use.high()))
            .because("nobody likes so much of it; the usual dose is "
                + use.source().orElse("of the pantry")),
        subject,
        InThePan.name(line),
        "use");
    double most = most(formula, line, use);
    Optional<Fix> fix = OtherShare.edits(subject, formula, line, lower(most))
        .filter(edits -> formula.amounts().lines().stream()
                .filter(other -> InThePan.name(other).equals(InThePan.name(line)))
                .count()
            == 1)
        .map(edits ->
            new Fix("Lower it to " + Display.percent(lower(most)) + " and scale the rest", edits));
    boolean isError = dose.fraction() > CANNOT_BE_MEANT * use.high().fraction();
    return (isError ? finding.as(Severity.ERROR) : finding)
        .withFixes(fix.stream().toList());
  }

  /** The highest usual dose as a share of the charge, once all else is scaled up around it. */
  private static double most(ComputedFormula formula, Amounts.LineAmount line, UseRange use) {
    double high = use.high().fraction();
    if (!(use.basis() instanceof Basis.Finished)) {
      return high;
    }
    double own = line.share().map(BigFraction::doubleValue).orElse(0.0);
    double left = formula.process().yieldShare().orElse(Ratio.ONE).fraction() - own;
    double others = Math.max(0, left) / (1 - own);
    return high * others / (1 - high + high * others);
  }

  private static BigFraction lower(double most) {
    return new BigFraction((int) Math.floor(most * 10_000), 10_000);
  }
}
