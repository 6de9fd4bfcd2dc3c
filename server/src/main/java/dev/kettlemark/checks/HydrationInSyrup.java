package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.AgentReport;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.AgentTraits;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports an agent that is hot enough to take up water, but in a syrup whose sugar holds the water.
 *
 * <p>How much sugar an agent stands is a fact of the pantry. Handbooks differ, so what lies above it is
 * worth knowing first, then a warning, and an error only where nothing hydrates any more.
 */
public final class HydrationInSyrup implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "hydration-in-syrup", "an agent should take up water that the sugar already holds");

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
    Set<String> told = new HashSet<>();
    List<StageResult> stages = formula.process().stages();
    // The last mass that holds an agent knows all that the agent met.
    for (int i = stages.size() - 1; i >= 0; i--) {
      for (Agent agent : stages.get(i).left().agents()) {
        if (told.add(agent.name() + " " + agent.line().span().start())) {
          AgentReport.of(agent).stream()
              .filter(report -> report.need() == AgentReport.Need.HYDRATION)
              .filter(report -> report.verdict() == AgentReport.Verdict.TOO_MUCH_SUGAR)
              .flatMap(report -> finding(subject, formula, report).stream())
              .forEach(findings::add);
        }
      }
    }
    return findings;
  }

  private static Optional<Finding> finding(
      Subject subject, ComputedFormula formula, AgentReport report) {
    return report
        .best()
        .flatMap(met -> met.solubleSolids().toOptional().map(solids -> {
          String name = report.agent().name();
          String most = report
              .agent()
              .traits()
              .hydrates()
              .flatMap(condition -> condition.mostSolids())
              .map(Display::estimate)
              .orElse("");
          return INFO.at(
                  met.step().word().span(),
                  "`%s` should take up water here, among %s sugar; it stands %s",
                  name,
                  Display.estimate(solids),
                  most)
              .as(severity(subject, solids))
              .because("sugar takes the water first, and the agent stays a powder: hydrate it"
                  + " before the sugar goes in")
              .withRelated(subject.entry().origin(report.agent().line().span()), "weighed in here")
              .withFixes(fix(subject, formula, report.agent(), met).stream().toList());
        }));
  }

  private static Severity severity(Subject subject, Ratio solids) {
    if (solids.compareTo(subject.threshold(Threshold.BLOCKED_HYDRATION)) > 0) {
      return Severity.ERROR;
    }
    return solids.compareTo(subject.threshold(Threshold.HINDERED_HYDRATION)) > 0
        ? Severity.WARNING
        : Severity.INFORMATION;
  }

  /** Boils it in the stage's own water before the first step, where it needs no sugar to part it. */
  private static Optional<Fix> fix(
      Subject subject, ComputedFormula formula, Agent agent, Agent.Met met) {
    boolean isSimple =
        agent.traits().dispersal().flatMap(AgentTraits.Dispersal::carrier).isEmpty()
            && met.stage().equals(agent.stage());
    Optional<Stage> stage = formula.formula().stage(agent.stage()).filter(s -> isSimple);
    Optional<Statement> first = stage
        .flatMap(s -> s.steps().stream().findFirst())
        .filter(step -> subject.isWrittenHere(step.span()));
    Optional<String> water = stage.flatMap(s -> s.amounts().stream()
        .map(AmountLine::ingredient)
        .filter(line -> formula
            .material(line.value())
            .flatMap(material -> material.ingredient())
            .filter(HydrationInSyrup::isWater)
            .isPresent())
        .map(line -> line.value())
        .findFirst());
    return first.flatMap(step -> water.map(liquid -> {
      WrittenLines lines = WrittenLines.of(subject);
      String time = agent
          .traits()
          .hydrates()
          .flatMap(AgentTraits.Condition::seconds)
          .map(seconds -> "for " + Display.duration(seconds) + " ")
          .orElse("");
      TextEdit edit = lines.above(
          step.span(),
          WrittenLines.step("sprinkle", agent.name() + " into " + liquid) + "\n"
              + WrittenLines.step("boil", agent.name() + " " + time + "until hydrated"));
      return new Fix("Boil it in `" + liquid + "` first", List.of(edit));
    }));
  }

  private static boolean isWater(Ingredient ingredient) {
    return ingredient.isLiquid()
        && ingredient.composition().map(c -> c.water().percent() > 95).orElse(false);
  }
}
