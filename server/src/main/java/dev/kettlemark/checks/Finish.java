package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Derived;
import dev.kettlemark.model.Verb;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whether a formula brings its mass to an end.
 *
 * <p>A soaked gelatine, a foam base or a premix is a part of something else: its doses are high, and what
 * it still lacks happens in the formula that takes it.
 */
final class Finish {

  /** What is done to a mass that nothing is added to any more. */
  private static final Set<Verb> LAST = Set.of(
      Verb.DEPOSIT,
      Verb.PIPE,
      Verb.SPREAD,
      Verb.SET,
      Verb.CUT,
      Verb.DRY,
      Verb.ENROBE,
      Verb.DIP,
      Verb.DUST,
      Verb.PACK);

  private static final Derived<Boolean> REACHED = Derived.by(Finish::reached);

  private static final Derived<List<Agent>> AGENTS = Derived.by(Finish::eachAgent);

  private Finish() {}

  /** Whether the formula says what its mass is like to eat, or shapes it. */
  static boolean isReached(ComputedFormula formula) {
    return REACHED.of(formula);
  }

  private static boolean reached(ComputedFormula formula) {
    return formula.formula().facts().first("texture").isPresent()
        || formula
            .formula()
            .steps()
            .anyMatch(
                step -> Verb.of(step.word().value()).filter(LAST::contains).isPresent());
  }

  /** The agents in what the formula makes, each line once; none where the formula is a part of something else. */
  static List<Agent> agents(ComputedFormula formula) {
    return isReached(formula) ? all(formula) : List.of();
  }

  /** The agents in what a formula makes, each line once. */
  static List<Agent> all(ComputedFormula formula) {
    return AGENTS.of(formula);
  }

  private static List<Agent> eachAgent(ComputedFormula formula) {
    return formula.process().last().stream()
        .flatMap(stage -> stage.left().agents().stream())
        .collect(Collectors.toMap(
            agent -> agent.stage() + " " + agent.name(),
            agent -> agent,
            (one, same) -> one,
            LinkedHashMap::new))
        .values()
        .stream()
        .toList();
  }
}
