package dev.kettlemark.analysis;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.Cooling;
import dev.kettlemark.science.Vessel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** What lies in one stage while its steps are done. */
final class Contents {

  /** No bench weighs so many things into one stage; each step may look at every one of them. */
  private static final int MOST_PARCELS = 250;

  private static final double AN_HOUR = 3600;

  private final String stage;
  private final Kitchen kitchen;

  /** The bowl or pan, with the temperature that it has come to. */
  private Optional<Vessel> bowl;

  private final List<StageParcel> parcels;

  /**
   * Puts a stage's amounts and takes in place.
   *
   * @param parcels in the order written; where there are too many to tell apart, the rest counts as one
   */
  Contents(Stage stage, Kitchen kitchen, List<StageParcel> parcels) {
    this.stage = stage.name().value();
    this.kitchen = kitchen;
    this.bowl = stage.vessel().map(Located::value).flatMap(name -> bowl(kitchen, name));
    this.parcels = new ArrayList<>(parcels);
    if (parcels.size() > MOST_PARCELS) {
      List<StageParcel> rest = this.parcels.subList(MOST_PARCELS - 1, parcels.size());
      StageParcel one = Meeting.withoutBalance(List.copyOf(rest)).merged();
      rest.clear();
      this.parcels.add(one);
    }
  }

  List<StageParcel> parcels() {
    return List.copyOf(parcels);
  }

  /** All parcels as the one mass that the stage leaves. */
  Meeting together() {
    return join(parcels);
  }

  StepResult apply(Statement step) {
    Verb verb = Verb.of(step.word().value()).orElse(Verb.NEVER);
    return remembered(done(step, verb), verb);
  }

  private StepResult done(Statement step, Verb verb) {
    return switch (verb.effect()) {
      case MERGE -> merge(step);
      case COOK -> cook(step);
      case BOIL -> boil(step);
      case HEAT -> heat(step);
      case AERATE -> aerate(step);
      case WAIT -> waitFor(step, verb);
      case MEASURE -> measured(step);
      case SHAPE, NONE -> unchanged(step);
    };
  }

  /** Agents remember what the mass around them went through, and the mass shows what they became. */
  @SuppressWarnings("ReferenceEquality") // Two parcels that are equal are two all the same.
  private StepResult remembered(StepResult result, Verb verb) {
    boolean boiled = verb.effect() == Verb.Effect.COOK || verb.effect() == Verb.Effect.BOIL;
    boolean heatsAll =
        verb.effect() == Verb.Effect.HEAT && result.step().objectNames().isEmpty();
    if (boiled || heatsAll) {
      result.after().stream().findFirst().map(StageParcel::temperature).ifPresent(this::warmBowl);
    }
    List<StageParcel> after = new ArrayList<>();
    for (StageParcel parcel : result.after()) {
      StageParcel wiser = parcel.agents().isEmpty()
          ? parcel
          : AgentStates.shown(parcel.withAgents(parcel.agents().stream()
              .map(agent -> agent.after(met(result.step(), parcel, boiled)))
              .toList()));
      Set<StageParcel> same = identities(List.of(parcel));
      parcels.replaceAll(one -> same.contains(one) ? wiser : one);
      after.add(wiser);
    }
    return result.leaving(after);
  }

  private Agent.Met met(Statement step, StageParcel parcel, boolean boiled) {
    return new Agent.Met(
        stage,
        step,
        parcel.temperature(),
        seconds(step),
        parcel.composition().map(Contents::solubleSolids),
        parcel.portion().map(portion -> portion.massOf(Component.WATER)),
        boiled);
  }

  private static Ratio solubleSolids(Composition composition) {
    double sweet = composition.sweetSolids().fraction();
    double all = sweet + composition.water().fraction();
    return all > 0 ? Ratio.ofFraction(sweet / all) : Ratio.ZERO;
  }

  private static Optional<Double> seconds(Statement step) {
    return step.figure(Connective.FOR, Unit.Dimension.TIME)
        .map(time -> Math.max(0, time.value().middleInBase().doubleValue()));
  }

  private StepResult merge(Statement step) {
    List<StageParcel> before = touched(step);
    Meeting meeting = join(before);
    StageParcel after = meeting.merged().with(reached(step));
    put(before, after);
    Optional<Band<Temperature>> merged = meeting.temperature();
    return new StepResult(
        step, before, List.of(after), meeting.steam(), merged, meeting.derivation());
  }

  private StepResult cook(Statement step) {
    List<StageParcel> before = touched(step);
    if (before.isEmpty()) {
      return unchanged(step);
    }
    Meeting meeting = join(before);
    Boiling boiling = Boiling.of(step, meeting.merged(), kitchen);
    StageParcel after = boiling.after().with(reached(step)).withAir(Air.NONE);
    put(before, after);
    return new StepResult(
        step,
        before,
        List.of(after),
        meeting.steam().plus(boiling.evaporated()),
        Optional.empty(),
        Optional.of(boiling.derivation()));
  }

  /** Without a target the boil only heats; what it loses then is not modelled, and says so. */
  private StepResult boil(Statement step) {
    if (step.figure(Connective.TO, Unit.Dimension.TEMPERATURE).isPresent()) {
      return cook(step);
    }
    List<StageParcel> before = touched(step);
    if (before.isEmpty()) {
      return unchanged(step);
    }
    Meeting meeting = join(before);
    StageParcel charge = meeting.merged();
    StageParcel after =
        charge.at(Boiling.boilingPoint(charge, kitchen)).with(reached(step)).withAir(Air.NONE);
    put(before, after);
    Optional<Derivation> note =
        step.has(Connective.UNDER, "lid") ? Optional.empty() : Optional.of(Boiling.untold());
    return new StepResult(step, before, List.of(after), meeting.steam(), Optional.empty(), note);
  }

  private StepResult heat(Statement step) {
    Optional<Band<Temperature>> target = step.figure(Connective.TO, Unit.Dimension.TEMPERATURE)
        .or(() -> step.figure(Connective.AT, Unit.Dimension.TEMPERATURE))
        .or(() -> step.figure(Connective.BELOW, Unit.Dimension.TEMPERATURE))
        .map(figure -> Boiling.band(figure.value()));
    List<StageParcel> before = touched(step);
    return change(
        step, before, parcel -> target.map(parcel::at).orElse(parcel).with(reachedBy(step)));
  }

  private List<State> reachedBy(Statement step) {
    List<State> states = new ArrayList<>(reached(step));
    if (step.is("temper")) {
      states.add(State.TEMPERED);
    }
    return states;
  }

  private StepResult aerate(Statement step) {
    List<StageParcel> before = whipped(step);
    if (before.isEmpty()) {
      return unchanged(step);
    }
    List<State> states = new ArrayList<>(List.of(State.FOAM));
    states.addAll(reached(step));
    Meeting meeting = join(before);
    StageParcel whipped = meeting.merged();
    // A mass that is whipped further keeps the peak it had.
    StageParcel peaked = whipped.isAerated() ? whipped.with(reached(step)) : whipped.with(states);
    StageParcel aired = peaked.withAir(Air.whippedInto(peaked));
    // The whisk brings room air to the mass all the time.
    StageParcel after = seconds(step)
        .map(time -> aired.at(Cooling.after(aired.temperature(), Band.of(kitchen.room()), time)))
        .orElse(aired);
    put(before, after);
    return new StepResult(
        step, before, List.of(after), meeting.steam(), Optional.empty(), Air.whipped(after));
  }

  /** Where there is a foam already, a bare {@code whip} goes on with it; what waits beside it stays. */
  private List<StageParcel> whipped(Statement step) {
    List<StageParcel> all = touched(step);
    List<StageParcel> foams = all.stream().filter(StageParcel::isAerated).toList();
    return step.objectNames().isEmpty() && !foams.isEmpty() ? foams : all;
  }

  /** What is left alone goes towards the temperature of the place, and is there after an hour. */
  private StepResult waitFor(Statement step, Verb verb) {
    List<StageParcel> before = touched(step);
    Optional<Double> time = seconds(step);
    Band<Temperature> place = step.figure(Connective.AT, Unit.Dimension.TEMPERATURE)
        .map(figure -> Boiling.band(figure.value()))
        .orElse(Band.of(kitchen.room()));
    List<State> states = new ArrayList<>(reached(step));
    if (verb == Verb.SET) {
      states.add(State.SET);
    }
    UnaryOperator<StageParcel> cooled = parcel -> time.isEmpty()
        ? parcel
        : parcel.at(
            time.get() > AN_HOUR ? place : Cooling.after(parcel.temperature(), place, time.get()));
    return change(step, before, parcel -> cooled.apply(parcel).with(states));
  }

  /** A density that the step checks for is the density that the mass is brought to. */
  private StepResult measured(Statement step) {
    Optional<Band<Density>> density =
        step.figure(Unit.Dimension.DENSITY).flatMap(figure -> density(figure.value()));
    List<State> states = reached(step);
    return change(
        step,
        touched(step),
        parcel -> density
            .filter(written -> parcel.isAerated())
            .map(written -> parcel.withAir(Air.at(parcel, written)))
            .orElse(parcel)
            .with(states));
  }

  private static Optional<Band<Density>> density(Quantity written) {
    double slack = written.toleranceInBase().map(BigFraction::doubleValue).orElse(0.0);
    double low = written.lowInBase().doubleValue() - slack;
    double high = written.highInBase().doubleValue() + slack;
    return low > 0 && high >= low
        ? Optional.of(
            new Band<>(Density.ofGramsPerMillilitre(low), Density.ofGramsPerMillilitre(high)))
        : Optional.empty();
  }

  private StepResult unchanged(Statement step) {
    List<State> states = reached(step);
    return change(step, touched(step), parcel -> parcel.with(states));
  }

  private StepResult change(
      Statement step, List<StageParcel> before, UnaryOperator<StageParcel> change) {
    List<StageParcel> after = before.stream().map(change).toList();
    IdentityHashMap<StageParcel, StageParcel> changed = new IdentityHashMap<>();
    for (int i = 0; i < before.size(); i++) {
      changed.put(before.get(i), after.get(i));
    }
    parcels.replaceAll(parcel -> changed.getOrDefault(parcel, parcel));
    return new StepResult(step, before, after, Mass.ZERO, Optional.empty(), Optional.empty());
  }

  private Meeting join(List<StageParcel> before) {
    Meeting meeting = Meeting.of(before, kitchen, bowl);
    meeting.temperature().ifPresent(this::warmBowl);
    return meeting;
  }

  /** A bowl takes its heat once: from then on it is about as warm as what lies in it. */
  private void warmBowl(Band<Temperature> mass) {
    bowl = bowl.map(vessel -> vessel.at(mass.low()));
  }

  private static Optional<Vessel> bowl(Kitchen kitchen, String name) {
    return kitchen
        .vessel(name)
        .flatMap(House.Vessel::weighs)
        .map(mass -> Vessel.ofSteel(mass, kitchen.temperatureOf(name)));
  }

  private void put(List<StageParcel> before, StageParcel after) {
    if (before.isEmpty()) {
      return;
    }
    Set<StageParcel> joined = identities(before.subList(1, before.size()));
    Set<StageParcel> first = identities(before.subList(0, 1));
    parcels.replaceAll(parcel -> first.contains(parcel) ? after : parcel);
    parcels.removeIf(joined::contains);
  }

  /** The parcels themselves: two that look alike are still two. */
  private static Set<StageParcel> identities(List<StageParcel> parcels) {
    Set<StageParcel> set = Collections.newSetFromMap(new IdentityHashMap<>());
    set.addAll(parcels);
    return set;
  }

  /**
   * The parcels that a step speaks of: its objects and what they go into, or all where it names none.
   *
   * <p>What is folded, streamed or poured in without saying into what goes into the main mass: the
   * aerated one, or else the heaviest that a step has worked on.
   */
  private List<StageParcel> touched(Statement step) {
    Set<String> names = Stream.of(
            step.objectNames(),
            step.names(Connective.INTO),
            step.names(Connective.IN),
            step.names(Connective.WITH))
        .flatMap(List::stream)
        .map(Located::value)
        .collect(Collectors.toSet());
    List<StageParcel> named = parcels.stream()
        .filter(parcel -> !Collections.disjoint(parcel.names(), names))
        .toList();
    if (named.isEmpty()) {
      return List.copyOf(parcels);
    }
    boolean saysWhere = step.has(Connective.INTO) || step.has(Connective.IN);
    if (saysWhere || !joinsMainMass(step)) {
      return named;
    }
    return Stream.concat(mainMass(named).stream(), named.stream()).toList();
  }

  private static boolean joinsMainMass(Statement step) {
    return step.is("fold")
        || step.is("stream")
        || step.is("pour")
        || step.is("sprinkle")
        || step.is("disperse")
        || step.is("mix");
  }

  private Optional<StageParcel> mainMass(List<StageParcel> named) {
    Set<StageParcel> besides = identities(named);
    List<StageParcel> worked = parcels.stream()
        .filter(parcel -> !besides.contains(parcel))
        .filter(parcel -> parcel.worked() || parcel.isAerated())
        .toList();
    return worked.stream()
        .filter(StageParcel::isAerated)
        .findFirst()
        .or(() ->
            worked.stream().max(Comparator.comparing(parcel -> parcel.mass().orElse(Mass.ZERO))));
  }

  static List<State> reached(Statement step) {
    return step.names(Connective.UNTIL).stream()
        .flatMap(name -> State.of(name.value()).stream())
        .toList();
  }
}
