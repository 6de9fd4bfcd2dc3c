package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;

/**
 * Reports a foam whose liquid holds too much or too little protein to be whipped.
 *
 * <p>Only powders are judged for too little: egg white and chickpea liquid are as they are.
 */
public final class FoamLiquidOff implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "foam-liquid-off",
      "what is to be whipped holds too much or too little protein for its water");

  /** As fresh egg white has it, from which most foams are made; USDA SR26, food 01124. */
  private static final Ratio USUAL = Ratio.ofPercent(11);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> formula.process().stages().stream()
            .flatMap(stage -> stage.steps().stream()
                .filter(step -> step.step().is("whip"))
                .filter(step -> step.before().stream().noneMatch(StageParcel::isAerated))
                .findFirst()
                .flatMap(step -> check(subject, formula, stage, step))
                .stream()))
        .toList();
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, StageResult stage, StepResult step) {
    List<Amounts.LineAmount> whipping = formula.amounts().lines().stream()
        .filter(line -> formula.formula().stages().get(line.stage()).equals(stage.stage()))
        .filter(line -> step.before().stream().anyMatch(p -> p.holds(InThePan.name(line))))
        .filter(line -> ingredient(formula, line).filter(FoamLiquidOff::whips).isPresent())
        .toList();
    double charge = formula.process().charge().mass().grams();
    double protein = InThePan.share(formula, whipping, Component.PROTEIN) * charge;
    double water = step.before().stream()
        .mapToDouble(p ->
            p.portion().map(portion -> portion.massOf(Component.WATER).grams()).orElse(Double.NaN))
        .sum();
    if (!(protein > 0 && water >= 0)) {
      return Optional.empty();
    }
    Ratio strength = Ratio.ofFraction(protein / (protein + water));
    Band<Ratio> usual = subject.threshold(Threshold.FOAM_PROTEIN);
    boolean isThin = strength.compareTo(usual.low()) < 0
        && whipping.stream()
            .allMatch(line -> ingredient(formula, line)
                .filter(i -> i.form().filter("powder"::equals).isPresent())
                .isPresent());
    boolean isPaste = strength.compareTo(usual.high()) > 0;
    return isThin || isPaste
        ? Optional.of(finding(subject, formula, stage, step, whipping, strength, usual))
        : Optional.empty();
  }

  private static boolean whips(Ingredient ingredient) {
    return ingredient.hasRole("whipping") && !ingredient.hasRole("gelling");
  }

  private static Optional<Ingredient> ingredient(ComputedFormula formula, Amounts.LineAmount line) {
    return formula.material(InThePan.name(line)).flatMap(Material::ingredient);
  }

  private static Finding finding(
      Subject subject,
      ComputedFormula formula,
      StageResult stage,
      StepResult step,
      List<Amounts.LineAmount> whipping,
      Ratio strength,
      Band<Ratio> usual) {
    boolean isPaste = strength.compareTo(usual.high()) > 0;
    Amounts.LineAmount agent = whipping.get(0);
    Finding finding = INFO.at(
            agent.line().ingredient().span(),
            "protein is %s of the protein and water that are whipped, usual is %s",
            Display.estimate(strength),
            Display.range(usual.low(), usual.high()))
        .because(
            isPaste
                ? "no whisk brings air into such a paste; take water from a syrup into the foam"
                : "so thin a liquid holds no air; take water from the foam into a syrup")
        .withRelated(subject.entry().origin(step.step().span()), "whipped here");
    return finding.withFixes(water(
        subject, formula, stage, InThePan.share(formula, whipping, Component.PROTEIN), strength));
  }

  /** Moves water between the foam and the pan that has most of it. */
  private static List<Fix> water(
      Subject subject, ComputedFormula formula, StageResult stage, double protein, Ratio strength) {
    double now = protein / strength.fraction() - protein;
    double wanted = protein / USUAL.fraction() - protein;
    return WaterMove.fix(subject, formula, stage.stage(), OtherShare.share(wanted - now)).stream()
        .toList();
  }
}
