package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.scaling.WeighingLine;
import dev.kettlemark.scaling.WeighingList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports an amount that no scale of the house can weigh well enough.
 *
 * <p>The finest scale that can hold the amount counts, and one step of it: a scale that shows 1 g may
 * show 1 g for anything from half a gram up. The limits are those of the weighing list. Without a
 * house, its scales or a batch, nothing can be said.
 */
public final class BelowScale implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("below-scale", "an amount is too small for the scales of the house");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .flatMap(
            formula -> WeighingList.of(formula).map(list -> check(subject, formula, list.lines())))
        .orElse(List.of());
  }

  private static List<Finding> check(
      Subject subject, ComputedFormula formula, List<WeighingLine> weighings) {
    List<Finding> findings = new ArrayList<>();
    List<AmountLine> amounts = formula.formula().amounts();
    for (int i = 0; i < amounts.size(); i++) {
      WeighingLine weighing = weighings.get(i);
      if (weighing.scale().isPresent() && weighing.grams().signum() > 0) {
        Amounts.LineAmount line = formula.amounts().lines().get(i);
        List<Fix> fixes =
            weighing
                .premix()
                .flatMap(premix -> PremixFix.of(subject, formula, line, premix))
                .stream()
                .toList();
        check(
                subject,
                formula.kitchen(),
                amounts.get(i),
                weighing,
                weighing.scale().get())
            .map(finding -> finding.withFixes(fixes))
            .ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Optional<Finding> check(
      Subject subject,
      Kitchen kitchen,
      AmountLine amount,
      WeighingLine weighing,
      House.Scale scale) {
    Optional<Ingredient> ingredient = subject.ingredient(weighing.ingredient());
    double allowed = ingredient
        .map(known -> WeighingList.allowedError(kitchen, known))
        .orElse(kitchen.threshold(Threshold.USUAL_WEIGHING_ERROR).fraction());
    double step = WeighingList.stepShare(scale, weighing.grams());
    if (step <= allowed) {
      return Optional.empty();
    }
    Finding finding = OtherPlace.tool(
        INFO.at(
                amount.ingredient().span(),
                "%s of `%s` is little for scale `%s`, which reads %s",
                mass(weighing.grams()),
                weighing.ingredient(),
                scale.name().value(),
                Display.trimmed(scale.step().doubleValue(), 4) + " g")
            .because(weighing
                .premix()
                .map(BelowScale::proposal)
                .orElse("one step of the scale is "
                    + Display.estimate(Ratio.ofFraction(step))
                    + " of it; make a larger batch, or weigh it on a finer scale")),
        subject,
        scale.name().value());
    boolean isCritical = ingredient.filter(WeighingList::isCritical).isPresent();
    return Optional.of(isCritical ? finding.as(Severity.ERROR) : finding);
  }

  private static String proposal(WeighingLine.Premix premix) {
    return "mix 1 part of it with %d parts of `%s`, weigh %s of the mix, and weigh %s less of `%s`"
        .formatted(
            premix.parts(),
            premix.carrier(),
            mass(premix.grams()),
            mass(premix.carrierGrams()),
            premix.carrier());
  }

  private static String mass(BigFraction grams) {
    return Display.mass(Mass.ofGrams(grams.doubleValue()));
  }
}
