package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.CookedWeight;
import dev.kettlemark.analysis.Expectation;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports something released that does not say how much of it comes out.
 *
 * <p>A formula says so by {@code makes} or {@code expect yield}, or by its batch where nothing boils away;
 * a product by {@code make}.
 */
public final class MissingYield implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("missing-yield", "something released does not say how much of it comes out");

  private static final String WHY = "nobody can plan a batch from it";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Optional<Located<String>> released = subject
        .declaration()
        .flatMap(Facts::of)
        .flatMap(facts -> facts.wordOf("status"))
        .filter(status -> status.value().equals("released"));
    return released
        .flatMap(status -> subject
            .declaration()
            .flatMap(d -> d instanceof Product product
                ? ofProduct(subject, product, status)
                : subject.formula().flatMap(formula -> ofFormula(subject, formula, status))))
        .stream()
        .toList();
  }

  private static Optional<Finding> ofFormula(
      Subject subject, ComputedFormula formula, Located<String> status) {
    Facts facts = formula.formula().facts();
    if (facts.first("makes").isPresent()
        || facts.says("expect", Expectation.YIELD)
        || isBatch(formula)) {
      return Optional.empty();
    }
    Finding finding = INFO.at(
            status.span(),
            "`%s` is released without a yield",
            formula.formula().name().value())
        .because(WHY);
    return Optional.of(finding.withFixes(
        expected(formula).map(text -> add(subject, "expect", text)).stream().toList()));
  }

  /** Whether what is weighed in is what comes out. */
  private static boolean isBatch(ComputedFormula formula) {
    return formula.formula().batch().isPresent()
        && formula.process().evaporated().grams() == 0
        && formula.process().cooked().isKnown();
  }

  /** {@code yield 87.5 % +- 1.2}, with the error of the boiling model. */
  private static Optional<String> expected(ComputedFormula formula) {
    double charge = formula.process().charge().mass().grams();
    return formula
        .process()
        .cooked()
        .toOptional()
        .filter(cooked -> charge > 0)
        .map(cooked -> "yield " + Display.fixed(cooked.mass().grams() / charge * 100, 1) + " % ± "
            + Display.fixed(Math.max(0.5, cooked.slack().grams() / charge * 100), 1));
  }

  private static Optional<Finding> ofProduct(
      Subject subject, Product product, Located<String> status) {
    if (product.pieces().isPresent()) {
      return Optional.empty();
    }
    Finding finding = INFO.at(
            status.span(),
            "`%s` is released without a number of pieces",
            product.name().value())
        .because(WHY);
    return Optional.of(finding.withFixes(pieces(subject, product).stream()
        .filter(count -> count > 0)
        .map(count -> add(subject, "make", count + " pieces"))
        .toList()));
  }

  /** How many whole pieces one batch of the centre gives. */
  private static Optional<Long> pieces(Subject subject, Product product) {
    return product.centre().flatMap(centre -> {
      Optional<BigFraction> each = centre.measure().value() instanceof Measure.Weight weight
          ? Optional.of(weight.grams()).filter(grams -> grams.signum() > 0)
          : Optional.empty();
      double kept = 1 - product.loss().map(loss -> loss.value().doubleValue()).orElse(0.0);
      return centre
          .material()
          .flatMap(name -> subject.ask(Formulas.computed(name.value())))
          .filter(formula -> !formula.isNominal())
          .flatMap(formula -> formula.process().cooked().toOptional())
          .map(CookedWeight::mass)
          .flatMap(mass ->
              each.map(grams -> (long) Math.floor(mass.grams() * kept / grams.doubleValue())));
    });
  }

  private static Fix add(Subject subject, String word, String rest) {
    return new Fix(
        "Add `" + word + " " + rest + "`",
        List.of(new Columns(subject.section()).addFact(Optional.empty(), word, rest)));
  }
}
