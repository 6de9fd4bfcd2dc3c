package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.Agent.Met;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The heat that an agent meets in the words of the text, and where more of it can be written. */
final class AgentHeat {

  private static final List<Connective> TARGETS =
      List.of(Connective.TO, Connective.AT, Connective.ABOVE);

  /** What a mass is said to be once its agent has taken up water. */
  private static final Set<String> DONE =
      Set.of(State.HYDRATED.word(), State.DISSOLVED.word(), State.CLEAR.word());

  /** With less water than so many times its own mass an agent is a paste; common practice, no source. */
  private static final double LEAST_WATER = 5;

  private AgentHeat() {}

  /** Whether some step names a temperature that is hot enough, though the model does not follow it. */
  static boolean isSaid(Agent agent, Temperature limit) {
    return agent.met().stream()
        .anyMatch(met -> TARGETS.stream()
            .anyMatch(word -> met.step()
                .figure(word, Unit.Dimension.TEMPERATURE)
                .filter(figure -> figure.value().lowInBase().doubleValue() >= limit.celsius())
                .isPresent()));
  }

  /** Whether it is warmed by eye: until it is dissolved, and to no temperature. */
  static boolean isByEye(Agent agent) {
    return agent.met().stream()
        .map(Met::step)
        .filter(step -> step.is(Verb.WARM.word()) || step.is(Verb.HOLD.word()))
        .filter(step -> step.figure(Unit.Dimension.TEMPERATURE).isEmpty())
        .anyMatch(step ->
            step.names(Connective.UNTIL).stream().anyMatch(state -> DONE.contains(state.value())));
  }

  /** Whether the model knows what all masses around it are made of. */
  static boolean isFollowed(Agent agent) {
    return agent.met().stream().allMatch(met -> met.water().isKnown());
  }

  /**
   * Writes a step behind the one that brings the agent into enough water, in its own stage.
   *
   * @return nothing where it never lies in water there, where sugar holds the water, or where something
   *     lies in it that foams
   */
  static Optional<Fix> heated(Subject subject, Agent agent, String title, String line) {
    boolean foams = subject.formula().stream()
        .flatMap(formula -> formula.formula().stage(agent.stage()).stream())
        .flatMap(stage -> stage.amounts().stream())
        .anyMatch(amount -> subject
            .ingredient(amount.ingredient().value())
            .filter(ingredient -> ingredient.hasRole("whipping"))
            .isPresent());
    return agent.met().stream()
        .filter(met -> met.stage().equals(agent.stage()) && !foams)
        .filter(met -> subject.isWrittenHere(met.step().span()))
        .filter(met -> isInWater(agent, met))
        .findFirst()
        .map(met ->
            new Fix(title, List.of(WrittenLines.of(subject).below(met.step().span(), line))));
  }

  private static boolean isInWater(Agent agent, Met met) {
    boolean isWet = met.water()
        .map(water -> water.grams() >= LEAST_WATER * agent.mass().grams())
        .orElse(false);
    return isWet
        && agent
            .traits()
            .hydrates()
            .flatMap(condition -> condition.mostSolids())
            .map(most ->
                met.solubleSolids().map(solids -> solids.compareTo(most) <= 0).orElse(false))
            .orElse(true);
  }
}
