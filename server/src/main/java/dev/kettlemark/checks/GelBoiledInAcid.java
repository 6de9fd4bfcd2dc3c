package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports a gelling agent that is boiled together with acid.
 *
 * <p>Agar, carrageenan and gelatine lose strength in hot acid within minutes. What sets in acid, such as
 * high methoxyl pectin, is another matter, and fruit is only looked at where it is there for its acid.
 */
public final class GelBoiledInAcid implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("gel-boiled-in-acid", "a gelling agent is boiled together with acid");

  /** What takes up water below it is soaked or stirred in cold, with acid or without. */
  private static final Temperature HOT = Temperature.ofCelsius(60);

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
    for (Located<String> acid : acids(subject, formula)) {
      Set<String> carriers = HeatOf.carriers(formula, acid.value());
      Set<String> dry = new HashSet<>();
      Set<String> met = new HashSet<>();
      formula.process().stages().stream()
          .flatMap(stage -> stage.steps().stream())
          .flatMap(step -> step.after().stream()
              .filter(mass -> mass.names().stream().anyMatch(carriers::contains))
              .flatMap(mass -> {
                mass.agents().stream()
                    .filter(agent -> met.add(agent.name()) && !isHydrated(agent))
                    .forEach(agent -> dry.add(agent.name()));
                return boils(step)
                    ? finding(subject, formula, step.step(), mass, acid, dry).stream()
                    : Stream.empty();
              }))
          .findFirst()
          .ifPresent(findings::add);
    }
    return findings;
  }

  private static List<Located<String>> acids(Subject subject, ComputedFormula formula) {
    return formula.formula().amounts().stream()
        .map(AmountLine::ingredient)
        .filter(name -> subject
            .ingredient(name.value())
            .filter(found -> found.hasRole("acidulant"))
            .isPresent())
        .toList();
  }

  /**
   * Whether an agent had the heat to take up water before the step at hand.
   *
   * <p>Acid that meets it sooner than that is told of by another rule.
   */
  private static boolean isHydrated(Agent agent) {
    List<Agent.Met> before = agent.met().subList(0, Math.max(0, agent.met().size() - 1));
    return agent
        .traits()
        .hydrates()
        .filter(condition -> condition.above() && condition.limit().compareTo(HOT) >= 0)
        .map(condition -> before.stream()
            .anyMatch(met -> met.temperature().high().compareTo(condition.limit()) >= 0))
        .orElse(true);
  }

  private static boolean boils(StepResult step) {
    return Verb.of(step.step().word().value())
        .map(Verb::effect)
        .filter(effect -> effect == Verb.Effect.BOIL || effect == Verb.Effect.COOK)
        .isPresent();
  }

  private static Optional<Finding> finding(
      Subject subject,
      ComputedFormula formula,
      Statement boil,
      StageParcel mass,
      Located<String> acid,
      Set<String> dry) {
    Ratio limit = subject.threshold(Threshold.ACID_IN_BOIL);
    Optional<Ratio> share = mass.composition()
        .toOptional()
        .map(composition -> Ratio.ofFraction(composition.fraction(Component.ACID)))
        .filter(found -> found.compareTo(limit) >= 0);
    Optional<Agent> gel = mass.agents().stream()
        .filter(agent -> agent.ingredient().hasRole("gelling"))
        .filter(agent -> !agent.traits().needs().contains("acid") && !dry.contains(agent.name()))
        .findFirst();
    return gel.flatMap(agent -> share.map(found -> INFO.at(
            acid.span(),
            "`%s` boils with `%s`, and the mass holds %s acid",
            acid.value(),
            agent.name(),
            Display.percent(found))
        .because(
            "hot acid cuts the gel short within minutes; add it at the end, when the boil is over")
        .withRelated(subject.entry().origin(boil.span()), "boiled here")
        .withFixes(later(subject, formula, acid))));
  }

  private static List<Fix> later(Subject subject, ComputedFormula formula, Located<String> acid) {
    return formula.amounts().lines().stream()
        .filter(amount -> amount.line().ingredient().equals(acid))
        .flatMap(amount -> LaterAddition.of(
            subject, formula, amount.line(), formula.formula().stages().get(amount.stage()), "mix")
            .stream())
        .toList();
  }
}
