package dev.kettlemark.features;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.AgentReport;
import dev.kettlemark.model.AgentTraits;
import dev.kettlemark.model.AgentTraits.Condition;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;

/** Whether the gelling, thickening and whipping agents of a mass were brought to work, in words. */
final class AgentText {

  private AgentText() {}

  /** One line for each agent; empty where there is none. */
  static String of(List<Agent> agents) {
    return String.join("\n", agents.stream().map(AgentText::line).toList());
  }

  private static String line(Agent agent) {
    List<String> told = AgentReport.of(agent).stream().map(AgentText::told).toList();
    return "- " + Markdown.code(agent.name()) + ": "
        + (told.isEmpty() ? "asks for nothing" : String.join("; ", told));
  }

  private static String told(AgentReport report) {
    String asks =
        "to " + report.need().words() + limit(report).map(l -> " (" + l + ")").orElse("");
    String met = report
        .best()
        .map(best ->
            " at " + Display.celsius(best.temperature()) + " in " + Markdown.code(best.stage()))
        .orElse("");
    return switch (report.verdict()) {
      case REACHED -> asks + ": reached" + met;
      case TIME_UNSAID -> asks + ": warm enough" + met + ", but no step says for how long";
      case TOO_SHORT -> asks + ": too short" + met;
      case TOO_MUCH_SUGAR -> asks + ": too much sugar in the water" + met;
      case PERHAPS -> asks + ": perhaps" + met + ", as warm as bowl and air leave it";
      case NOT_REACHED -> asks + ": not reached" + met;
    };
  }

  private static Optional<String> limit(AgentReport report) {
    AgentTraits traits = report.agent().traits();
    return switch (report.need()) {
      case HYDRATION -> traits.hydrates().map(AgentText::condition);
      case ACTIVATION -> traits.activates().map(AgentText::condition);
      case COAGULATION -> traits.coagulates().map(AgentText::condition);
      case SETTING -> traits.sets().map(t -> "below " + Display.celsius(t));
      case SOAK, BOIL -> Optional.empty();
    };
  }

  private static String condition(Condition condition) {
    return (condition.above() ? "above " : "below ")
        + Display.celsius(condition.limit())
        + condition.seconds().map(s -> " for " + Display.duration(s)).orElse("")
        + condition
            .mostSolids()
            .map(most -> ", below " + Display.estimate(most) + " sugars")
            .orElse("");
  }
}
