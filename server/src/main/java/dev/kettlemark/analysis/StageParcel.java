package dev.kettlemark.analysis;

import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.State;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.Volume;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Something that lies in a stage as one mass.
 *
 * @param names what went into it, by the names the steps use
 * @param mass what it weighs
 * @param slack by how much the mass may be off, for all that was boiled
 * @param composition what it is made of
 * @param temperature the band in which its temperature lies
 * @param states what it has become
 * @param air the volume of all bubbles in it
 * @param agents what in it gels, thickens or foams
 * @param worked whether a step has acted on it
 */
public record StageParcel(
    Set<String> names,
    Outcome<Mass> mass,
    Mass slack,
    Outcome<Composition> composition,
    Band<Temperature> temperature,
    Set<State> states,
    Outcome<Band<Volume>> air,
    List<Agent> agents,
    boolean worked) {

  public StageParcel {
    names = Set.copyOf(names);
    states = Set.copyOf(states);
    agents = List.copyOf(agents);
  }

  /** Something without air and without a past. */
  static StageParcel plain(
      String name, Outcome<Mass> mass, Outcome<Composition> composition, Temperature temperature) {
    return new StageParcel(
        Set.of(name),
        mass,
        Mass.ZERO,
        composition,
        Band.of(temperature),
        Set.of(),
        Air.NONE,
        List.of(),
        false);
  }

  /** The mass with its composition; unknown where either is. */
  public Outcome<Portion> portion() {
    return Outcome.both(mass, composition, Portion::new);
  }

  public boolean holds(String name) {
    return names.contains(name);
  }

  public boolean has(State state) {
    return states.contains(state);
  }

  /** Whether air has been beaten in. */
  public boolean isAerated() {
    for (State state : states) {
      if (state.line() == State.Line.FOAM) {
        return true;
      }
    }
    return false;
  }

  StageParcel named(String name) {
    return new StageParcel(
        Set.of(name), mass, slack, composition, temperature, states, air, agents, false);
  }

  StageParcel part(double share) {
    return new StageParcel(
        names,
        mass.map(m -> m.times(share)),
        slack.times(share),
        composition,
        temperature,
        states,
        air.map(band -> new Band<>(band.low().times(share), band.high().times(share))),
        agents.stream().map(agent -> agent.part(share)).toList(),
        worked);
  }

  StageParcel at(Band<Temperature> other) {
    return new StageParcel(names, mass, slack, composition, other, states, air, agents, true);
  }

  StageParcel with(List<State> reached) {
    if (reached.isEmpty()) {
      return this;
    }
    Set<State> all = states.isEmpty() ? EnumSet.noneOf(State.class) : EnumSet.copyOf(states);
    reached.forEach(state -> all.removeIf(old -> old.line() == state.line()));
    all.addAll(reached);
    return new StageParcel(names, mass, slack, composition, temperature, all, air, agents, true);
  }

  StageParcel holding(Outcome<Mass> newMass, Mass newSlack, Outcome<Composition> newComposition) {
    return new StageParcel(
        names, newMass, newSlack, newComposition, temperature, states, air, agents, true);
  }

  StageParcel withAir(Outcome<Band<Volume>> other) {
    return new StageParcel(
        names, mass, slack, composition, temperature, states, other, agents, worked);
  }

  StageParcel withAgents(List<Agent> others) {
    return new StageParcel(
        names, mass, slack, composition, temperature, states, air, others, worked);
  }

  /** Names of both, without temperature and states, which a merge decides. */
  static Set<String> namesOf(List<StageParcel> parcels) {
    Set<String> names = new LinkedHashSet<>();
    parcels.forEach(parcel -> names.addAll(parcel.names()));
    return names;
  }
}
