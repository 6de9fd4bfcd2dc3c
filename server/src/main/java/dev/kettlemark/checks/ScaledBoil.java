package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Origin;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Trial;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * Tells of a boiled batch that is many times the one that was made so far.
 *
 * <p>A formula is held against its largest trial, and what a product orders against the batch of the
 * formula.
 */
public final class ScaledBoil implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("scaled-boil", "a boil is many times larger than what was made so far");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Ratio most = subject.threshold(Threshold.SCALE_UP);
    return Stream.concat(
            subject.formula().flatMap(formula -> overTrials(subject, formula, most)).stream(),
            subject.ask(Products.computed(subject.entry())).stream()
                .flatMap(product -> overBatch(subject, product, most)))
        .toList();
  }

  private static Optional<Finding> overTrials(
      Subject subject, ComputedFormula formula, Ratio most) {
    Optional<Made> largest = subject
        .ask(Lookup.trialsOf(formula.formula().name().value()))
        .stream()
        .flatMap(ScaledBoil::made)
        .max(Comparator.comparing(Made::batch));
    return formula
        .formula()
        .batch()
        .filter(batch -> subject.isWrittenHere(batch.span()) && boils(formula))
        .flatMap(batch -> largest
            .filter(made -> isFar(batch.value(), made.batch, most))
            .map(made -> finding(
                    batch.span(), "this batch", batch.value(), made.batch, "largest trial")
                .withRelated(made.written, "made so far")
                .withFixes(BatchFix.smaller(
                        subject,
                        formula,
                        made.batch.doubleValue()
                            * most.fraction()
                            / batch.value().doubleValue())
                    .stream()
                    .toList())));
  }

  /** How much was made at once so far, and where that is written. */
  private record Made(BigFraction batch, Origin written) {}

  private static Stream<Made> made(Entry entry) {
    return entry.declaration().stream()
        .flatMap(d -> d instanceof Trial trial ? trial.facts().batch().stream() : Stream.empty())
        .map(batch -> new Made(batch.value(), entry.origin(batch.span())));
  }

  private static Stream<Finding> overBatch(Subject subject, ComputedProduct product, Ratio most) {
    Optional<Span> place = product.product().pieces().map(Located::span);
    return product.needs().stream()
        .flatMap(need -> subject
            .ask(Formulas.computed(need.material()))
            .filter(ScaledBoil::boils)
            .flatMap(formula -> formula.formula().batch())
            .flatMap(batch -> need.scaling()
                .toOptional()
                .filter(scaling -> isFar(scaling.batch(), batch.value(), most))
                .flatMap(scaling -> place.map(span -> finding(
                    span,
                    "the batch of " + Excerpt.of(need.material()),
                    scaling.batch(),
                    batch.value(),
                    "batch of the formula"))))
            .map(finding -> OtherPlace.fact(finding, subject, need.material(), "batch"))
            .stream());
  }

  private static boolean boils(ComputedFormula formula) {
    return CookStep.of(formula).findAny().isPresent();
  }

  private static boolean isFar(BigFraction batch, BigFraction made, Ratio most) {
    return made.signum() > 0 && batch.divide(made).doubleValue() > most.fraction();
  }

  private static Finding finding(
      Span place, String what, BigFraction batch, BigFraction made, String than) {
    return INFO.at(
            place,
            "%s, %s, is %s times the %s, %s",
            what,
            mass(batch),
            Display.trimmed(batch.divide(made).doubleValue(), 1),
            than,
            mass(made))
        .because("a larger boil takes longer to reach its temperature, so it colours and inverts"
            + " more; split it, or make a trial of that size");
  }

  private static String mass(BigFraction grams) {
    return Display.batch(Mass.ofGrams(grams.doubleValue()));
  }
}
