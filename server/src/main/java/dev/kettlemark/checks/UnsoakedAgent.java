package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.Agent.Met;
import dev.kettlemark.analysis.AgentReport;
import dev.kettlemark.analysis.AgentReport.Need;
import dev.kettlemark.analysis.AgentReport.Verdict;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;

/**
 * Reports gelatine that meets heat before it has swollen in cold liquid.
 *
 * <p>Its outside melts to a skin through which no water goes, and specks stay.
 */
public final class UnsoakedAgent implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("unsoaked-agent", "an agent meets heat before it is soaked");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> Finish.agents(formula).stream())
        .flatMap(agent -> AgentReport.of(agent).stream())
        .filter(report -> report.need() == Need.SOAK && report.verdict() == Verdict.NOT_REACHED)
        .filter(report -> report.best().isPresent())
        .map(report -> finding(subject, report.agent(), report.best().get()))
        .toList();
  }

  private static Finding finding(Subject subject, Agent agent, Met hot) {
    Finding finding = INFO.at(
            agent.line().span(),
            "`%s` meets %s before it is soaked",
            agent.name(),
            Display.celsius(hot.temperature()))
        .because(
            "it melts outside, stays dry inside and leaves specks; soak it in five times its weight"
                + " of cold water for ten minutes, and count that water");
    return soak(subject, agent, hot).map(finding::withFix).orElse(finding);
  }

  /** Soaks it in the cold water of its own stage, if there is any, before anything is warmed there. */
  private static Optional<Fix> soak(Subject subject, Agent agent, Met hot) {
    Optional<Stage> own = subject
        .formula()
        .flatMap(formula -> formula.formula().stage(agent.stage()))
        .filter(stage -> stage.steps().contains(hot.step()))
        .filter(stage -> subject.isWrittenHere(stage.steps().get(0).span()));
    Optional<String> water = own.flatMap(stage -> stage.amounts().stream()
        .filter(line -> line.at().isEmpty() || line.at().get().value().celsius() < 40)
        .map(AmountLine::ingredient)
        .map(Located::value)
        .filter(name ->
            subject.ingredient(name).filter(found -> found.hasRole("water")).isPresent())
        .findFirst());
    return water.map(name -> new Fix(
        "Soak `" + agent.name() + "` in `" + name + "` first",
        List.of(WrittenLines.of(subject)
            .above(
                own.get().steps().get(0).span(),
                WrittenLines.step(
                    "soak", agent.name() + " in " + name + " for 10 min until bloomed")))));
  }
}
