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
import java.util.stream.Stream;

/**
 * Reports an agent whose mass never gets as hot as it needs to take up water or to work.
 *
 * <p>An error where the whole predicted band lies below the limit, a warning where only a part of it
 * does. A boil that is missing is told by {@link UnboiledAgent} alone.
 */
public final class AgentTooCold implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("agent-too-cold", "an agent never gets the heat that it needs");

  /** How much hotter the step is that a fix writes; whoever stands at the stove reads to a few degrees. */
  private static final double MARGIN = 5;

  private static final double USUAL_SECONDS = 120;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> Finish.agents(formula).stream())
        .filter(agent -> !agent.traits().needs().contains("boil"))
        .filter(agent -> AgentHeat.isFollowed(agent) && !AgentHeat.isByEye(agent))
        .flatMap(agent -> cold(agent).stream())
        .map(cold -> finding(subject, cold))
        .toList();
  }

  /** A need for heat that is not, or not for certain, met. */
  private record Cold(AgentReport report, Condition condition) {}

  private static Optional<Cold> cold(Agent agent) {
    // What hydrates in the cold and gels on heating is told of what is too warm for it.
    Optional<Condition> hydrates = agent.traits().hydrates();
    if (hydrates.filter(condition -> !condition.above()).isPresent()) {
      return Optional.empty();
    }
    Stream<Cold> needs = AgentReport.of(agent).stream()
        .flatMap(report -> condition(report).map(c -> new Cold(report, c)).stream());
    return needs
        .filter(cold -> cold.condition().above())
        .filter(cold -> cold.report().verdict() == Verdict.NOT_REACHED
            || cold.report().verdict() == Verdict.PERHAPS)
        .filter(cold -> !AgentHeat.isSaid(agent, cold.condition().limit()))
        .findFirst();
  }

  private static Optional<Condition> condition(AgentReport report) {
    if (report.need() == Need.HYDRATION) {
      return report.agent().traits().hydrates();
    }
    return report.need() == Need.ACTIVATION
        ? report.agent().traits().activates()
        : Optional.empty();
  }

  private static Finding finding(Subject subject, Cold cold) {
    AgentReport report = cold.report();
    String name = report.agent().name();
    Temperature limit = cold.condition().limit();
    boolean perhaps = report.verdict() == Verdict.PERHAPS;
    Finding finding = INFO.at(
            report.agent().line().span(),
            "`%s` comes to %s, and needs %s to %s",
            name,
            report.best().map(met -> Display.celsius(met.temperature())).orElse("no heat at all"),
            Display.celsius(limit),
            report.need().words())
        .as(perhaps ? Severity.WARNING : Severity.ERROR)
        .because(
            perhaps
                ? "a cold bowl fails where a warm one works; warm the bowl, or pour hotter or more syrup"
                : "it stays a powder, and nothing gels or thickens; heat it with part of the liquid first");
    Finding related = report
        .best()
        .filter(met -> subject.isWrittenHere(met.step().span()))
        .map(met -> finding.withRelated(
            subject.entry().origin(met.step().span()), "the hottest that it meets"))
        .orElse(finding);
    return AgentHeat.heated(subject, report.agent(), title(name, limit), step(cold, name))
        .map(related::withFix)
        .orElse(related);
  }

  private static String title(String name, Temperature limit) {
    return "Warm `" + name + "` to " + target(limit);
  }

  private static String step(Cold cold, String name) {
    double seconds = cold.condition().seconds().orElse(USUAL_SECONDS);
    return WrittenLines.step(
        "warm",
        name + " to " + target(cold.condition().limit()) + " for " + Display.duration(seconds)
            + " until hydrated");
  }

  private static String target(Temperature limit) {
    return Display.celsius(Temperature.ofCelsius(limit.celsius() + MARGIN));
  }
}
