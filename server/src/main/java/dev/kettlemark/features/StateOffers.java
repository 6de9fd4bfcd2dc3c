package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Verb;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The states behind {@code until}, those that the verb leads to first. */
final class StateOffers {

  private StateOffers() {}

  static List<Offer> of(Optional<Verb> verb) {
    Set<State> reached = verb.map(StateOffers::reachedBy).orElse(Set.of());
    Set<State.Line> lines = verb.map(StateOffers::linesOf).orElse(Set.of());
    return Arrays.stream(State.values())
        .sorted(Comparator.comparing((State state) -> !reached.contains(state))
            .thenComparing(state -> !lines.contains(state.line()))
            .thenComparing(Comparator.naturalOrder()))
        .map(state -> Offer.of(state.word(), Kind.STATE, state.look()))
        .toList();
  }

  /** Verbs that aim at a state of their own. */
  private static Set<State> reachedBy(Verb verb) {
    return switch (verb) {
      case SOAK -> Set.of(State.BLOOMED);
      case HYDRATE, STAND -> Set.of(State.HYDRATED, State.BLOOMED);
      case BLEND, DISPERSE, SPRINKLE -> Set.of(State.LUMP_FREE, State.WET_MIX);
      case BOIL, WARM -> Set.of(State.DISSOLVED, State.CLEAR, State.HYDRATED);
      case COOL -> Set.of(State.COOL);
      case TEMPER -> Set.of(State.TEMPERED);
      case DRY -> Set.of(State.DRY, State.SKINNED, State.TACKY);
      default -> Set.of();
    };
  }

  private static Set<State.Line> linesOf(Verb verb) {
    return switch (verb.effect()) {
      case MERGE -> Set.of(State.Line.MIX);
      case COOK -> Set.of(State.Line.SYRUP);
      case BOIL -> Set.of(State.Line.MIX, State.Line.SYRUP);
      case HEAT -> Set.of(State.Line.MIX, State.Line.COAT);
      case AERATE -> Set.of(State.Line.FOAM);
      case WAIT, SHAPE -> Set.of(State.Line.SETTING);
      case MEASURE, NONE -> Set.of();
    };
  }
}
