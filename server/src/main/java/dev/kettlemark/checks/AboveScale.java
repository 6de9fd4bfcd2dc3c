package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.House;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.scaling.WeighingLine;
import dev.kettlemark.scaling.WeighingList;
import dev.kettlemark.text.Excerpt;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.fraction.BigFraction;

/** Reports an amount that no scale of the house can hold at once. */
public final class AboveScale implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("above-scale", "an amount is more than any scale of the house holds");

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
      if (weighing.weighings() > 1 && weighing.scale().isPresent()) {
        findings.add(OtherPlace.tool(
                finding(amounts.get(i), weighing, weighing.scale().get()),
                subject,
                weighing.scale().get().name().value())
            .withFixes(smaller(subject, formula, weighing, weighing.scale().get())));
      }
    }
    return findings;
  }

  private static Finding finding(AmountLine amount, WeighingLine weighing, House.Scale scale) {
    return INFO.at(
            amount.ingredient().span(),
            "%s of %s is more than scale `%s` holds, %s",
            mass(weighing.grams()),
            Excerpt.of(weighing.ingredient()),
            scale.name().value(),
            mass(scale.capacity()))
        .because("weigh it in %d goes of %s each, and count them"
            .formatted(weighing.weighings(), mass(weighing.grams().divide(weighing.weighings()))));
  }

  /** As large a batch as the scale can weigh in one go. */
  private static List<Fix> smaller(
      Subject subject, ComputedFormula formula, WeighingLine weighing, House.Scale scale) {
    return BatchFix.smaller(
            subject, formula, scale.capacity().divide(weighing.grams()).doubleValue())
        .stream()
        .toList();
  }

  private static String mass(BigFraction grams) {
    return Display.batch(Mass.ofGrams(grams.doubleValue()));
  }
}
