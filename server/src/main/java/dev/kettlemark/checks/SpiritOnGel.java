package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reports more spirit in a mass than an agent in it stands.
 *
 * <p>The limit is the share of ethanol in all liquid, water and ethanol together, as the pantry tells it.
 * What is cooked to a temperature loses its spirit.
 */
public final class SpiritOnGel implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("spirit-on-gel", "more spirit than an agent in the mass stands");

  /** A fix stays a little below the limit. */
  private static final double MARGIN = 0.9;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(formula -> check(subject, formula)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula formula) {
    List<Finding> findings = new ArrayList<>();
    List<String> told = new ArrayList<>();
    formula.process().stages().stream()
        .flatMap(stage -> stage.steps().stream())
        .flatMap(step -> step.after().stream())
        .forEach(mass -> spirit(mass)
            .ifPresent(spirit -> mass.agents().stream()
                .filter(agent -> agent
                    .traits()
                    .ethanol()
                    .filter(limit -> spirit.compareTo(limit) > 0)
                    .isPresent())
                .filter(agent -> told.add(agent.stage() + " " + agent.name())
                    && told.stream()
                            .filter((agent.stage() + " " + agent.name())::equals)
                            .count()
                        == 1)
                .forEach(agent -> findings.add(finding(subject, formula, agent, spirit)))));
    return findings;
  }

  private static Optional<Ratio> spirit(StageParcel mass) {
    return mass.composition().toOptional().flatMap(SpiritOnGel::spirit);
  }

  private static Optional<Ratio> spirit(Composition composition) {
    double spirit = composition.fraction(Component.ETHANOL);
    double all = spirit + composition.water().fraction();
    return spirit > 0 ? Optional.of(Ratio.ofFraction(spirit / all)) : Optional.empty();
  }

  private static Finding finding(
      Subject subject, ComputedFormula formula, Agent agent, Ratio spirit) {
    Ratio limit = agent.traits().ethanol().orElse(Ratio.ONE);
    Finding finding = OtherPlace.fact(
        INFO.at(
                agent.line().span(),
                "%s of the liquid around `%s` is spirit, and it stands %s",
                Display.estimate(spirit),
                agent.name(),
                Display.trimmed(limit.percent(), 1) + " %")
            .because("spirit takes its water away; it falls out in threads or does not set"),
        subject,
        agent.name(),
        "tolerates");
    return strongest(formula)
        .filter(line -> !formula.formula().inherits(line.line().span()))
        .filter(line -> ChargeLines.isOfCharge(formula, line.line()))
        .map(line -> less(subject, line, spirit, limit))
        .map(finding::withFix)
        .orElse(finding);
  }

  private static Optional<LineAmount> strongest(ComputedFormula formula) {
    return formula.amounts().lines().stream()
        .max(Comparator.comparingDouble(
            line -> line.share().map(s -> s.doubleValue()).orElse(0.0)
                * formula
                    .material(line.line().ingredient().value())
                    .flatMap(material -> material.composition().toOptional())
                    .map(composition -> composition.fraction(Component.ETHANOL))
                    .orElse(0.0)));
  }

  /** As much of the spirit as brings the liquid below the limit; what its own water brings is left out. */
  private static Fix less(Subject subject, LineAmount line, Ratio spirit, Ratio limit) {
    double factor = MARGIN
        * (limit.fraction() / limit.complement().fraction())
        / (spirit.fraction() / spirit.complement().fraction());
    double percent = line.share().map(share -> share.doubleValue() * 100).orElse(0.0) * factor;
    String figure = Figures.roundedDown(percent);
    return new Fix(
        "Take " + figure + " % of `" + line.line().ingredient().value() + "`",
        List.of(Figures.rewritten(subject.text(), line.line().measure().span(), figure)));
  }
}
