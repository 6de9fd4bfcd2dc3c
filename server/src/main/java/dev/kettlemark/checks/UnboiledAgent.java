package dev.kettlemark.checks;

import dev.kettlemark.analysis.AgentReport;
import dev.kettlemark.analysis.AgentReport.Need;
import dev.kettlemark.analysis.AgentReport.Verdict;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.List;

/**
 * Reports a gelling agent that dissolves only in a real boil and never gets one.
 *
 * <p>The heat of a syrup that is poured over it passes too fast, and the syrup has no water to give.
 */
public final class UnboiledAgent implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("unboiled-agent", "an agent that must be boiled is never boiled");

  /** A step that says so much means a boil, whatever its verb; water boils here at 1500 m. */
  private static final Temperature AS_GOOD_AS_BOILED = Temperature.ofCelsius(95);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> Finish.agents(formula).stream())
        .filter(agent -> agent.traits().needs().contains("boil"))
        .filter(agent -> !AgentHeat.isSaid(agent, AS_GOOD_AS_BOILED))
        .flatMap(agent -> AgentReport.of(agent).stream())
        .filter(report -> report.need() == Need.BOIL && report.verdict() == Verdict.NOT_REACHED)
        .map(report -> finding(subject, report))
        .toList();
  }

  private static Finding finding(Subject subject, AgentReport report) {
    String name = report.agent().name();
    Finding finding = OtherPlace.fact(
        INFO.at(
                report.agent().line().span(),
                "`%s` is never boiled%s",
                name,
                report
                    .best()
                    .map(met ->
                        "; the mass around it comes to " + Display.celsius(met.temperature()))
                    .orElse(""))
            .because(
                "it dissolves in boiling water only; without a boil it stays a powder and does not gel"),
        subject,
        name,
        "needs");
    return AgentHeat.heated(
            subject,
            report.agent(),
            "Boil `" + name + "` in its water",
            WrittenLines.step("boil", name + " under lid for 2 min until hydrated"))
        .map(finding::withFix)
        .orElse(finding);
  }
}
