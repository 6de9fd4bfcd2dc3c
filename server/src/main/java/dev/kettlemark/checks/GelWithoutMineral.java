package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Uses;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Mentions;
import dev.kettlemark.model.Stage;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a gelling agent that needs calcium or potassium in a formula without any source of it.
 *
 * <p>Hard water may bring enough calcium; nobody can read that in a formula.
 */
public final class GelWithoutMineral implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "gel-without-mineral", "a gelling agent lacks the mineral that it gels with");

  /** What an agent needs, and the traits of which one will do; calcium firms kappa carrageenan as well. */
  private static final Map<String, Set<String>> SOURCES = Map.of(
      "calcium", Set.of("calcium-source"),
      "potassium", Set.of("potassium-source", "calcium-source"));

  /** What a fix weighs in: a usual source, at the low end of its usual dose. */
  private static final Map<String, String> USUAL =
      Map.of("calcium", "calcium-lactate", "potassium", "potassium-citrate");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    List<Finding> findings = new ArrayList<>();
    subject.formula().ifPresent(formula -> {
      for (Agent agent : Finish.agents(formula)) {
        SOURCES.forEach((ion, traits) -> {
          if (agent.traits().needs().contains(ion)
              && !brings(subject, names(formula), traits, Uses.MOST_LEVELS)) {
            findings.add(finding(subject, formula, agent, ion));
          }
        });
      }
    });
    return findings;
  }

  private static List<String> names(ComputedFormula formula) {
    return formula.formula().amounts().stream()
        .map(line -> line.ingredient().value())
        .distinct()
        .toList();
  }

  /** Whether one of the materials, or something that it is made of, has one of the traits. */
  private static boolean brings(
      Subject subject, List<String> names, Set<String> traits, int levels) {
    for (String name : names) {
      Optional<Declaration> material = subject.material(name);
      if (material.isEmpty()) {
        return true; // Nobody knows what is in it.
      }
      if (material.get() instanceof Ingredient ingredient) {
        if (traits.stream().anyMatch(ingredient::hasTrait)) {
          return true;
        }
      } else if (levels > 0
          && brings(
              subject,
              Mentions.used(material.get()).stream()
                  .map(used -> used.value())
                  .distinct()
                  .toList(),
              traits,
              levels - 1)) {
        return true;
      }
    }
    return false;
  }

  private static Finding finding(
      Subject subject, ComputedFormula formula, Agent agent, String ion) {
    Finding finding = OtherPlace.fact(
        INFO.at(agent.line().span(), "`%s` gels with %s, and nothing brings any", agent.name(), ion)
            .because("without " + ion + " the gel is weak or does not form"),
        subject,
        agent.name(),
        "needs");
    return source(subject, formula, agent, USUAL.getOrDefault(ion, ""))
        .map(finding::withFix)
        .orElse(finding);
  }

  /** Weighs in a source where a rest takes up its weight or nothing must sum up to the whole. */
  private static Optional<Fix> source(
      Subject subject, ComputedFormula formula, Agent agent, String source) {
    boolean hasRest = formula.formula().amounts().stream()
        .map(AmountLine::measure)
        .anyMatch(measure -> measure.value() instanceof Measure.Sufficient);
    Optional<Stage> stage = formula.formula().stage(agent.stage());
    if (stage.isEmpty() || !hasRest || subject.ingredient(source).isEmpty()) {
      return Optional.empty();
    }
    WrittenLines lines = WrittenLines.of(subject);
    Optional<TextEdit> amount =
        lines.behindAmounts(stage.get(), WrittenLines.amount("0.10 %", source));
    Optional<TextEdit> step = lines.behindSteps(stage.get(), WrittenLines.step("mix", source));
    return amount.flatMap(weigh -> step.map(mix -> new Fix(
        "Weigh in `" + source + "`, once the agent has taken up its water", List.of(weigh, mix))));
  }
}
