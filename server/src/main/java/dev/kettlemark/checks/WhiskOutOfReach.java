package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.House;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import java.util.List;
import java.util.Optional;

/** Reports so little in a bowl that its whisk does not reach it. */
public final class WhiskOutOfReach implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("whisk-out-of-reach", "too little in a bowl for its whisk");

  /** A weight that is short by less than this is rounding; an own choice. */
  private static final double ROUNDING = 0.005;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().filter(formula -> !formula.isNominal()).stream()
        .flatMap(formula -> formula.process().stages().stream()
            .flatMap(stage -> check(subject, formula, stage).stream()))
        .toList();
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, StageResult stage) {
    Optional<House.Vessel> bowl = formula.kitchen().vesselOf(stage.stage());
    return bowl.flatMap(found -> found
        .whips()
        .flatMap(whips -> stage.steps().stream()
            .filter(step -> step.step().is("whip"))
            .flatMap(step -> mass(step)
                .filter(mass -> mass.grams() > 0)
                .filter(mass -> mass.grams() < whips.low().grams() * (1 - ROUNDING))
                .map(mass -> finding(subject, formula, step, mass, found, whips.low()))
                .stream())
            .findFirst()));
  }

  private static Optional<Mass> mass(StepResult step) {
    return step.before().stream()
        .map(StageParcel::mass)
        .reduce((one, other) -> Outcome.both(one, other, Mass::plus))
        .flatMap(Outcome::toOptional);
  }

  private static Finding finding(
      Subject subject,
      ComputedFormula formula,
      StepResult step,
      Mass mass,
      House.Vessel bowl,
      Mass least) {
    Finding finding = OtherPlace.tool(
        INFO.at(
                step.step().word().span(),
                "%s is in `%s`, which whips from %s",
                Display.mass(mass),
                bowl.name().value(),
                Display.mass(least))
            .because(
                "the whisk does not touch it; make a larger batch, or whip it in a narrow beaker"),
        subject,
        bowl.name().value());
    return BatchFix.larger(subject, formula, least.grams() / mass.grams())
        .map(finding::withFix)
        .orElse(finding);
  }
}
