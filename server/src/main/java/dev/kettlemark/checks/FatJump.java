package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Variant;
import dev.kettlemark.model.VariantChange;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reports a replacement in a variant that brings far more fat than what it replaces. */
public final class FatJump implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("fat-jump", "a replacement brings far more fat than what it replaces");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Optional<Variant> variant = subject.variant().filter(FatJump::replaces).isPresent()
        ? Rules.sound(subject)
        : Optional.empty();
    Optional<ComputedFormula> after = subject.formula();
    Optional<ComputedFormula> before = variant
        .flatMap(Variant::parent)
        .flatMap(parent -> subject.ask(Formulas.computed(parent.value())));
    if (before.isEmpty() || after.isEmpty()) {
      return List.of();
    }
    return variant.get().changes().stream()
        .flatMap(change ->
            change instanceof VariantChange.Replace replace ? Stream.of(replace) : Stream.empty())
        .flatMap(replace -> check(subject, before.get(), after.get(), replace).stream())
        .toList();
  }

  private static boolean replaces(Variant variant) {
    return variant.changes().stream().anyMatch(VariantChange.Replace.class::isInstance);
  }

  private static Optional<Finding> check(
      Subject subject,
      ComputedFormula before,
      ComputedFormula after,
      VariantChange.Replace replace) {
    String old = replace.old().value();
    String other = replace.replacement().ingredient().value();
    Optional<Double> was = ofFinished(before, old);
    Optional<Double> is = ofFinished(after, other);
    double limit = subject.threshold(Threshold.FAT_JUMP).fraction();
    return was.isPresent() && is.isPresent() && is.get() - was.get() > limit
        ? Optional.of(INFO.at(
                replace.replacement().ingredient().span(),
                "`%s` brings %s of the finished mass as fat, and `%s` brought %s",
                other,
                Display.estimate(Ratio.ofFraction(is.get())),
                old,
                Display.estimate(Ratio.ofFraction(was.get())))
            .because("the mass turns soft and oily, and fat brings a foam down; look for a kind"
                + " with its fat pressed out")
            .withRelated(subject.entry().origin(replace.old().span()), "what it replaces"))
        : Optional.empty();
  }

  /** The fat that the lines of a name bring, as a share of the finished mass. */
  private static Optional<Double> ofFinished(ComputedFormula formula, String name) {
    double share = formula.amounts().shareOf(name).doubleValue();
    Optional<Double> fat = formula
        .material(name)
        .flatMap(material -> material.composition().toOptional())
        .map(composition -> composition.fraction(Component.FAT));
    Optional<Double> left =
        formula.process().yieldShare().toOptional().map(Ratio::fraction).filter(yield -> yield > 0);
    return fat.flatMap(in -> left.map(yield -> share * in / yield));
  }
}
