package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.AgentReport;
import dev.kettlemark.analysis.AgentReport.Need;
import dev.kettlemark.analysis.AgentReport.Verdict;
import dev.kettlemark.model.AgentTraits.Condition;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;

/**
 * Reports an agent that takes up water in the cold only and never gets cold.
 *
 * <p>Methylcellulose and its kin gel on heating: in a warm mass the grains swell outside and stay dry inside.
 */
public final class AgentTooWarm implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("agent-too-warm", "an agent that takes up water in the cold never gets cold");

  /** How much colder the step is that a fix writes. */
  private static final double MARGIN = 5;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> Finish.agents(formula).stream())
        .filter(AgentHeat::isFollowed)
        .flatMap(agent -> AgentReport.of(agent).stream())
        .filter(report -> report.need() == Need.HYDRATION)
        .filter(report ->
            report.verdict() == Verdict.NOT_REACHED || report.verdict() == Verdict.PERHAPS)
        .flatMap(report ->
            cold(report).map(condition -> finding(subject, report, condition.limit())).stream())
        .toList();
  }

  private static Optional<Condition> cold(AgentReport report) {
    return report.agent().traits().hydrates().filter(condition -> !condition.above());
  }

  private static Finding finding(Subject subject, AgentReport report, Temperature limit) {
    Agent agent = report.agent();
    Finding finding = OtherPlace.fact(
        INFO.at(
                agent.line().span(),
                "`%s` takes up water below %s, and the coldest that it meets is %s",
                agent.name(),
                Display.celsius(limit),
                report.best().map(met -> Display.celsius(met.temperature())).orElse("the room"))
            .as(report.verdict() == Verdict.PERHAPS ? Severity.WARNING : Severity.ERROR)
            .because("warm, its grains swell outside and stay dry inside, and the mass has lumps"),
        subject,
        agent.name(),
        "hydrates");
    double seconds = cold(report).flatMap(Condition::seconds).orElse(1800.0);
    String target = Display.celsius(Temperature.ofCelsius(limit.celsius() - MARGIN));
    return AgentHeat.heated(
            subject,
            agent,
            "Cool `" + agent.name() + "` to " + target + " in its liquid",
            WrittenLines.step(
                "cool",
                agent.name() + " to " + target + " for " + Display.duration(seconds)
                    + " until hydrated"))
        .map(finding::withFix)
        .orElse(finding);
  }
}
