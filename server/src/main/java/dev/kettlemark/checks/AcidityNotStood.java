package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a pH that the text itself expects or checks and that an agent in the mass does not stand.
 *
 * <p>No pH is computed: fruit, milk and buffers decide it, and a formula tells none of them.
 */
public final class AcidityNotStood implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("acidity-not-stood", "a pH that an agent in the mass does not stand");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> Stream.concat(expected(formula), checked(formula)))
        .flatMap(written -> written.agents().stream()
            .flatMap(agent -> finding(subject, written.acidity(), agent).stream())
            .limit(1))
        .toList();
  }

  /** A pH with the agents that must stand it. */
  private record Written(Located<Quantity> acidity, List<Agent> agents) {}

  private static Stream<Written> expected(ComputedFormula formula) {
    List<Agent> agents = formula
        .process()
        .last()
        .map(StageResult::left)
        .map(mass -> mass.agents())
        .orElse(List.of());
    return formula
        .formula()
        .facts()
        .all("expect")
        .flatMap(fact -> acidity(fact).stream())
        .map(acidity -> new Written(acidity, agents));
  }

  private static Stream<Written> checked(ComputedFormula formula) {
    return formula.process().stages().stream()
        .flatMap(stage -> stage.steps().stream())
        .filter(step -> step.step().is("check"))
        .flatMap(step ->
            acidity(step.step()).map(acidity -> new Written(acidity, agents(step))).stream());
  }

  private static List<Agent> agents(StepResult step) {
    return step.after().stream().flatMap(mass -> mass.agents().stream()).toList();
  }

  private static Optional<Located<Quantity>> acidity(Statement statement) {
    return statement.figure(Unit.Dimension.ACIDITY);
  }

  private static Optional<Finding> finding(
      Subject subject, Located<Quantity> acidity, Agent agent) {
    Band<Double> written = Band.spanning(
        acidity.value().low().doubleValue(), acidity.value().high().doubleValue());
    return agent
        .traits()
        .acidity()
        .filter(stood -> !stood.overlaps(written))
        .map(stood -> OtherPlace.fact(
            INFO.at(
                    acidity.span(),
                    "`%s` stands pH %s to %s, and here it is %s",
                    agent.name(),
                    Display.trimmed(stood.low(), 1),
                    Display.trimmed(stood.high(), 1),
                    written.isExact()
                        ? Display.trimmed(written.low(), 1)
                        : Display.trimmed(written.low(), 1) + " to "
                            + Display.trimmed(written.high(), 1))
                .because(
                    "outside it falls out, gels too early or not at all; add acid after the set,"
                        + " buffer it, or take another agent"),
            subject,
            agent.name(),
            "tolerates"));
  }
}
