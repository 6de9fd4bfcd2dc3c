package dev.kettlemark.analysis;

import dev.kettlemark.model.State;
import dev.kettlemark.model.State.Line;
import dev.kettlemark.quantity.Temperature;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a mass has become through the agents in it, where no step says so. */
final class AgentStates {

  private AgentStates() {}

  /** The mass with the states that its agents have brought it to; a state that a step named stays. */
  static StageParcel shown(StageParcel parcel) {
    List<Agent> agents = parcel.agents();
    Set<State> reached = EnumSet.noneOf(State.class);
    boolean takesUpWater =
        agents.stream().anyMatch(agent -> agent.traits().hydrates().isPresent());
    if (takesUpWater
        && parcel.states().stream().noneMatch(state -> state.reaches(State.HYDRATED))
        && agents.stream().allMatch(AgentReport::isHydrated)) {
      reached.add(State.HYDRATED);
    }
    if (!isSetting(parcel) && agents.stream().anyMatch(agent -> gels(agent, parcel))) {
      reached.add(State.GELLED);
    }
    return parcel.with(List.copyOf(reached));
  }

  private static boolean gels(Agent agent, StageParcel parcel) {
    Optional<Temperature> sets = agent.traits().sets();
    boolean wasHot = sets.isPresent()
        && agent.met().stream().anyMatch(met -> met.temperature().low().compareTo(sets.get()) > 0);
    return wasHot
        && AgentReport.isHydrated(agent)
        && parcel.temperature().high().compareTo(sets.get()) <= 0;
  }

  private static boolean isSetting(StageParcel parcel) {
    return parcel.states().stream().anyMatch(state -> state.line() == Line.SETTING);
  }
}
