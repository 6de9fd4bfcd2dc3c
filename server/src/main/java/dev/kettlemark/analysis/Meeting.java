package dev.kettlemark.analysis;

import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.State;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.HeatBalance;
import dev.kettlemark.science.Parcel;
import dev.kettlemark.science.PouredTogether;
import dev.kettlemark.science.Vessel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Parcels that come together in one mass.
 *
 * @param merged the mass they make
 * @param temperature where they met with different heat, what they came to
 * @param steam what left because the mass would have passed its boiling point
 * @param derivation how the temperature came about
 */
record Meeting(
    StageParcel merged,
    Optional<Band<Temperature>> temperature,
    Mass steam,
    Optional<Derivation> derivation) {

  /** Below this difference in kelvin a heat balance would say nothing new. */
  private static final double SAME_HEAT = 2;

  /** Share of heat lost to air and whisk while pouring; common practice, no source. */
  private static final Ratio LOSS = Ratio.ofPercent(5);

  /** What makes up this share of a mass decides whether the whole is set; an own estimate. */
  private static final double NEARLY_ALL = 0.8;

  static Meeting of(List<StageParcel> parcels, Kitchen kitchen, Optional<Vessel> bowl) {
    if (parcels.isEmpty()) {
      StageParcel none = StageParcel.plain("", Outcome.known(Mass.ZERO), nothing(), kitchen.room());
      return new Meeting(none, Optional.empty(), Mass.ZERO, Optional.empty());
    }
    if (parcels.size() == 1) {
      StageParcel one = parcels.get(0);
      return new Meeting(one.at(one.temperature()), Optional.empty(), Mass.ZERO, Optional.empty());
    }
    return hasSameHeat(parcels) ? withoutBalance(parcels) : balanced(parcels, kitchen, bowl);
  }

  static Outcome<Composition> nothing() {
    return Outcome.unknown(Reason.MISSING_COMPOSITION, "nothing is weighed in");
  }

  /** The parcels as one mass that nobody has measured: any temperature between theirs. */
  static Meeting withoutBalance(List<StageParcel> parcels) {
    StageParcel merged = mixed(parcels, spannedTemperature(parcels));
    return new Meeting(merged, Optional.empty(), Mass.ZERO, Optional.empty());
  }

  private static Meeting balanced(
      List<StageParcel> parcels, Kitchen kitchen, Optional<Vessel> bowl) {
    List<Parcel> held = new ArrayList<>();
    for (StageParcel parcel : parcels) {
      Outcome<Portion> portion = parcel.portion();
      if (!portion.isKnown()) {
        return withoutBalance(parcels);
      }
      portion
          .toOptional()
          .filter(p -> p.mass().grams() > 0)
          .ifPresent(p -> held.add(new Parcel(p, parcel.temperature())));
    }
    if (held.size() < 2) {
      return withoutBalance(parcels);
    }
    return HeatBalance.of(held, bowl, LOSS, kitchen.pressure())
        .fold(together -> cooledBy(parcels, held, together), unknown -> withoutBalance(parcels));
  }

  /** Only steam that leaves with the bowl and the loss counted is taken off: the careful end. */
  private static Meeting cooledBy(
      List<StageParcel> parcels, List<Parcel> held, PouredTogether together) {
    StageParcel merged = mixed(parcels, together.temperature());
    Mass steam = together.steam().low();
    StageParcel after = steam.grams() > 0 ? without(merged, steam) : merged;
    Derivation derivation = HeatBalance.EQUATION.derive(
        Display.celsius(together.temperature()),
        held.stream()
            .map(parcel -> Derivation.given(
                Display.mass(parcel.portion().mass()),
                Display.celsius(parcel.temperature()),
                "the steps before"))
            .toList());
    return new Meeting(after, Optional.of(together.temperature()), steam, Optional.of(derivation));
  }

  private static StageParcel without(StageParcel merged, Mass steam) {
    Outcome<Portion> rest = merged.portion().map(portion -> {
      Mass mass = portion.mass().minus(steam);
      double water =
          portion.mass().times(portion.composition().water()).minus(steam).grams();
      Ratio share = Ratio.ofFraction(Math.max(0, water) / mass.grams());
      return new Portion(mass, portion.composition().withWaterFraction(share));
    });
    return merged.holding(rest.map(Portion::mass), merged.slack(), rest.map(Portion::composition));
  }

  private static StageParcel mixed(List<StageParcel> parcels, Band<Temperature> temperature) {
    Outcome<Mass> mass = Outcome.known(Mass.ZERO);
    Mass slack = Mass.ZERO;
    for (StageParcel parcel : parcels) {
      mass = Outcome.both(mass, parcel.mass(), Mass::plus);
      slack = slack.plus(parcel.slack());
    }
    return new StageParcel(
        StageParcel.namesOf(parcels),
        mass,
        slack,
        composition(parcels),
        temperature,
        states(parcels),
        Air.folded(parcels),
        parcels.stream().flatMap(parcel -> parcel.agents().stream()).toList(),
        true);
  }

  private static Outcome<Composition> composition(List<StageParcel> parcels) {
    List<Portion> portions = new ArrayList<>();
    for (StageParcel parcel : parcels) {
      Outcome<Portion> portion = parcel.portion();
      if (portion instanceof Outcome.Unknown<Portion> unknown) {
        return unknown.retyped();
      }
      portion.toOptional().filter(p -> p.mass().grams() > 0).ifPresent(portions::add);
    }
    return portions.isEmpty() ? nothing() : Outcome.known(Composition.mix(portions));
  }

  /**
   * A foam stays a foam when something goes in, a set mass stays set under a little dust, and coats
   * that are all tempered are so together; other states belong to what was alone.
   */
  private static Set<State> states(List<StageParcel> parcels) {
    Mass whole = Mass.ZERO;
    for (StageParcel parcel : parcels) {
      whole = whole.plus(parcel.mass().orElse(Mass.ZERO));
    }
    double most = whole.grams() * NEARLY_ALL;
    return parcels.stream()
        .flatMap(parcel -> parcel.states().stream()
            .filter(state -> state.line() == State.Line.FOAM
                || state == State.HYDRATED
                || (state.line() == State.Line.COAT
                    && parcels.stream().allMatch(other -> other.has(state)))
                || (state.line() == State.Line.SETTING
                    && parcel.mass().orElse(Mass.ZERO).grams() > most)))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static boolean hasSameHeat(List<StageParcel> parcels) {
    Band<Temperature> all = spannedTemperature(parcels);
    return all.high().kelvin() - all.low().kelvin() < SAME_HEAT;
  }

  private static Band<Temperature> spannedTemperature(List<StageParcel> parcels) {
    return parcels.stream().map(StageParcel::temperature).reduce(Band::spanning).orElseThrow();
  }
}
