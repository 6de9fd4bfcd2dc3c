package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.SyrupBoiling;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a check of solids or moisture that the cook before it cannot have left.
 *
 * <p>A boiling temperature says how much water is left; one of the two lines is wrong.
 */
public final class ContradictingSolids implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "contradicting-solids", "checked solids and the cook temperature contradict each other");

  private static final Set<String> SOLIDS = Set.of("solids", "brix");

  private static final Set<String> WATER = Set.of("moisture", "water");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> formula.process().stages().stream()
            .flatMap(stage -> stage.steps().stream()
                .filter(step -> step.step().is("check") && step.before().size() == 1)
                .flatMap(step -> check(subject, formula, stage, step).stream())))
        .toList();
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, StageResult stage, StepResult step) {
    Optional<Located<Quantity>> figure = step.step().figure(Unit.Dimension.SHARE);
    Optional<Boolean> isWater = isWater(step.step());
    Optional<Band<Ratio>> left =
        MassFigures.of(step.before().get(0), formula.kitchen()).moisture().toOptional();
    if (figure.isEmpty() || isWater.isEmpty() || left.isEmpty()) {
      return Optional.empty();
    }
    Band<Ratio> predicted = isWater.get() ? left.get() : left.get().map(Ratio::complement);
    Band<Ratio> written = band(figure.get().value());
    double slack = subject.threshold(Threshold.SOLIDS_GAP).fraction();
    double middle = (predicted.low().fraction() + predicted.high().fraction()) / 2;
    if (written.low().fraction() - slack <= middle && middle <= written.high().fraction() + slack) {
      return Optional.empty();
    }
    String what = isWater.get() ? "water" : "solids";
    String shown = Display.fixed(middle * 100, 0) + " %";
    Finding alone = INFO.at(
            figure.get().span(),
            "the steps before leave %s %s, not %s",
            Display.estimate(predicted),
            what,
            Display.estimate(written))
        .because("a boiling temperature says how much water is left, so one of the two is wrong");
    Finding finding = OtherPlace.step(alone, subject, formula, "cook", "the cook");
    if (!subject.isWrittenHere(figure.get().span())) {
      return Optional.of(finding);
    }
    Ratio wanted = Ratio.ofFraction((written.low().fraction() + written.high().fraction()) / 2);
    return Optional.of(finding
        .withFix(Fix.replace("Check for " + shown + " " + what, figure.get().span(), shown))
        .withFixes(
            cook(subject, formula, stage, step, isWater.get() ? wanted : wanted.complement())));
  }

  private static Optional<Boolean> isWater(Statement check) {
    for (Located<String> name : check.objectNames()) {
      String word = name.value().toLowerCase(Locale.ROOT);
      if (SOLIDS.contains(word) || WATER.contains(word)) {
        return Optional.of(WATER.contains(word));
      }
    }
    return Optional.empty();
  }

  private static Band<Ratio> band(Quantity figure) {
    double slack = figure.toleranceInBase().map(BigFraction::doubleValue).orElse(0.0);
    return Band.spanning(
        Ratio.ofFraction(figure.lowInBase().doubleValue() - slack),
        Ratio.ofFraction(figure.highInBase().doubleValue() + slack));
  }

  /** The cook of the same stage that would leave so much water. */
  private static List<Fix> cook(
      Subject subject, ComputedFormula formula, StageResult stage, StepResult step, Ratio water) {
    return CookStep.of(formula)
        .filter(cook -> cook.stage().equals(stage.stage())
            && stage.steps().indexOf(cook.result()) < stage.steps().indexOf(step))
        .reduce((one, later) -> later)
        .filter(cook -> water.isShare())
        .flatMap(cook -> cook.charge()
            .flatMap(charge -> SyrupBoiling.boilingPoint(
                    charge.composition().withWaterFraction(water),
                    formula.kitchen().pressure())
                .toOptional())
            .map(temperature -> cook.cookToHere(subject, temperature)))
        .orElse(List.of());
  }
}
