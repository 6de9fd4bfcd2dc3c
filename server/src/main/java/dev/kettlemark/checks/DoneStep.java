package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Derived;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A step with what it did, and the way to the steps that came before it.
 *
 * @param formula where it stands
 * @param stageIndex which stage of the formula
 * @param index which step of that stage
 */
record DoneStep(ComputedFormula formula, int stageIndex, int index) {

  /** Nobody cooks from a text with more steps or amounts; each may look at every other one. */
  private static final int MOST_STEPS = 300;

  private static final int MOST_AMOUNTS = 1000;

  private static final Derived<List<DoneStep>> ALL = Derived.by(DoneStep::each);

  /** Every step of a formula, in the order written; none for a text that nobody could cook from. */
  static Stream<DoneStep> of(ComputedFormula formula) {
    return all(formula).stream();
  }

  /** The same as a list. */
  static List<DoneStep> all(ComputedFormula formula) {
    return ALL.of(formula);
  }

  private static List<DoneStep> each(ComputedFormula formula) {
    List<StageResult> stages = formula.process().stages();
    List<DoneStep> steps = new ArrayList<>();
    if (formula.amounts().lines().size() <= MOST_AMOUNTS) {
      for (int stage = 0; stage < stages.size(); stage++) {
        int count = stages.get(stage).steps().size();
        for (int step = 0; step < count && steps.size() < MOST_STEPS; step++) {
          steps.add(new DoneStep(formula, stage, step));
        }
      }
    }
    return List.copyOf(steps);
  }

  /** Every step of one stage. */
  static Stream<DoneStep> of(ComputedFormula formula, int stage) {
    int steps = formula.process().stages().get(stage).steps().size();
    return IntStream.range(0, Math.min(steps, MOST_STEPS))
        .mapToObj(step -> new DoneStep(formula, stage, step));
  }

  StageResult stage() {
    return formula.process().stages().get(stageIndex);
  }

  StepResult result() {
    return stage().steps().get(index);
  }

  Statement step() {
    return result().step();
  }

  List<StageParcel> before() {
    return result().before();
  }

  List<StageParcel> after() {
    return result().after();
  }

  boolean is(Set<String> verbs) {
    return verbs.contains(step().word().value());
  }

  Verb.Effect effect() {
    return Verb.of(step().word().value()).map(Verb::effect).orElse(Verb.Effect.NONE);
  }

  /** How many seconds a clause names, the least that it says. */
  Optional<Double> seconds(Connective connective) {
    return step()
        .figure(connective, Unit.Dimension.TIME)
        .map(time -> Math.max(0, time.value().lowInBase().doubleValue()));
  }

  /** The steps that what this one acts on went through before, the oldest first. */
  List<DoneStep> past() {
    Set<String> names = names(before());
    Set<Integer> seen = new HashSet<>();
    List<DoneStep> past = new ArrayList<>();
    collect(stageIndex, index, names, seen, past);
    return past;
  }

  /** The steps of its past behind the last one with one of these verbs; the whole past where none is. */
  List<DoneStep> since(Set<String> verbs) {
    List<DoneStep> past = past();
    for (int i = past.size() - 1; i >= 0; i--) {
      if (past.get(i).is(verbs)) {
        return past.subList(i + 1, past.size());
      }
    }
    return past;
  }

  private void collect(
      int stage, int end, Set<String> names, Set<Integer> seen, List<DoneStep> past) {
    if (!seen.add(stage) || past.size() > MOST_STEPS) {
      return;
    }
    for (TakeLine take : formula.process().stages().get(stage).stage().takes()) {
      if (names.contains(take.stage().value())) {
        source(formula, stage, take).ifPresent(from -> {
          StageResult made = formula.process().stages().get(from);
          collect(from, made.steps().size(), names(made.parcels()), seen, past);
        });
      }
    }
    of(formula, stage)
        .limit(end)
        .filter(step -> !Collections.disjoint(names(step.after()), names))
        .forEach(past::add);
  }

  /** The stage that a line takes from: the last of that name before it. */
  static Optional<Integer> source(ComputedFormula formula, int stage, TakeLine take) {
    List<StageResult> stages = formula.process().stages();
    return IntStream.range(0, stage)
        .filter(i -> stages.get(i).name().equals(take.stage().value()))
        .boxed()
        .reduce((one, later) -> later);
  }

  private static Set<String> names(List<StageParcel> parcels) {
    return parcels.stream().flatMap(p -> p.names().stream()).collect(Collectors.toSet());
  }
}
