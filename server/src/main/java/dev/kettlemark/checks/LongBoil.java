package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;

/** Suggests less water where a pan boils most of what was poured in away again. */
public final class LongBoil implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.hint("long-boil", "much of the water only boils away again");

  /** What dissolves sugar with ease; common practice, no source. */
  private static final double ENOUGH_WATER = 0.3;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Ratio most = subject.threshold(Threshold.WORTHWHILE_COOK_OFF);
    return subject.formula().stream()
        .flatMap(formula ->
            CookStep.of(formula).flatMap(cook -> check(subject, formula, cook, most).stream()))
        .toList();
  }

  /** Where most of the water comes with a fruit or a milk there is nothing to save. */
  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, CookStep cook, Ratio most) {
    double before = cook.charge().map(charge -> charge.mass().grams()).orElse(0.0);
    double gone = cook.result().evaporated().grams();
    return Optional.of(InThePan.of(formula, cook))
        .filter(pan -> before > 0 && gone / before > most.fraction())
        .flatMap(pan -> PanWater.of(formula, pan))
        .filter(water -> water.lineFor(ENOUGH_WATER) < water.plain())
        .flatMap(water -> finding(subject, formula, cook, water, Ratio.ofFraction(gone / before)));
  }

  private static Optional<Finding> finding(
      Subject subject, ComputedFormula formula, CookStep cook, PanWater water, Ratio gone) {
    List<Fix> fixes =
        water.fix(subject, formula, "Lower the water to 30 % of the pan", ENOUGH_WATER);
    return fixes.isEmpty()
        ? Optional.empty()
        : Optional.of(INFO.at(
                cook.step().word().span(), "%s of the pan boils away", Display.estimate(gone))
            .because("a long boil browns and splits sugar, and 30 % water dissolves it as well")
            .withRelated(subject.entry().origin(water.line().line().measure().span()), "its water")
            .withFixes(fixes));
  }
}
