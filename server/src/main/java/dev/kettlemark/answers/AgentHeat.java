package dev.kettlemark.answers;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How hot an agent gets that works only from some temperature on.
 *
 * @param agent its name
 * @param fact the fact that asks for the heat, {@code activates} or {@code hydrates}
 * @param needed the temperature it asks for
 * @param hottest where the low end of its temperature is highest
 * @param meeting where a hotter mass meets it, the hottest such place; empty where none does
 */
public record AgentHeat(
    String agent,
    Statement fact,
    Temperature needed,
    Optional<Seen> hottest,
    Optional<Seen> meeting) {

  /** A temperature at a step. */
  public record Seen(StepPlace place, Band<Temperature> temperature) {}

  /** The names of all that is weighed in and asks for heat. */
  public static List<String> agents(ComputedFormula formula) {
    return formula.formula().amounts().stream()
        .map(line -> line.ingredient().value())
        .distinct()
        .filter(name -> ingredient(formula, name).flatMap(AgentHeat::threshold).isPresent())
        .toList();
  }

  /** Follows an agent through the stages. */
  public static Outcome<AgentHeat> of(ComputedFormula formula, String agent) {
    if (formula.formula().amounts().stream()
        .noneMatch(line -> line.ingredient().value().equals(agent))) {
      return Outcome.unknown(Reason.MISSING_FIGURE, "the formula weighs no `%s`", agent);
    }
    Optional<Statement> fact = ingredient(formula, agent).flatMap(AgentHeat::threshold);
    if (fact.isEmpty()) {
      return Outcome.unknown(
          Reason.MISSING_FIGURE,
          "`%s` does not say from which temperature on it works; `activates above 55 °C` would",
          agent);
    }
    List<Seen> seen = new ArrayList<>();
    List<Seen> met = new ArrayList<>();
    List<StageResult> stages = formula.process().stages();
    List<Set<String>> carriers = carriers(formula, agent);
    for (int i = 0; i < stages.size(); i++) {
      Set<String> names = carriers.get(i);
      List<StepResult> steps = stages.get(i).steps();
      for (int j = 0; j < steps.size(); j++) {
        StepPlace place = new StepPlace(i, j);
        StepResult step = steps.get(j);
        step.after().stream()
            .filter(parcel -> carries(parcel, names))
            .map(parcel -> new Seen(place, parcel.temperature()))
            .forEach(seen::add);
        if (hot(step, names).isPresent()) {
          step.merged().ifPresent(band -> met.add(new Seen(place, band)));
        }
      }
    }
    return Outcome.known(
        new AgentHeat(agent, fact.get(), needed(fact.get()), highest(seen), highest(met)));
  }

  /** Whether the low end of its temperature reaches what it asks for. */
  public boolean isEnough() {
    return hottest
        .filter(seen -> seen.temperature().low().compareTo(needed) >= 0)
        .isPresent();
  }

  /** The mass that brings the heat where it meets the agent, if one does. */
  static Optional<StageParcel> hot(StepResult step, Set<String> carriers) {
    Optional<StageParcel> agent =
        step.before().stream().filter(parcel -> carries(parcel, carriers)).findFirst();
    return agent.flatMap(cold -> step.before().stream()
        .filter(parcel -> !carries(parcel, carriers))
        .filter(
            parcel -> parcel.temperature().low().compareTo(cold.temperature().high()) > 0)
        .max(Comparator.comparing(parcel -> parcel.temperature().high())));
  }

  /** For each stage the names under which the agent lies in it: its own, and stages that hold it. */
  static List<Set<String>> carriers(ComputedFormula formula, String agent) {
    List<Set<String>> all = new ArrayList<>();
    Set<String> holding = new HashSet<>();
    for (Stage stage : formula.formula().stages()) {
      Set<String> names = new HashSet<>();
      for (AmountLine line : stage.amounts()) {
        if (line.ingredient().value().equals(agent)) {
          names.add(agent);
        }
      }
      for (TakeLine take : stage.takes()) {
        if (holding.contains(take.stage().value())) {
          names.add(take.stage().value());
        }
      }
      if (!names.isEmpty()) {
        holding.add(stage.name().value());
      }
      all.add(names);
    }
    return all;
  }

  private static boolean carries(StageParcel parcel, Set<String> carriers) {
    return !Collections.disjoint(parcel.names(), carriers);
  }

  private static Optional<Seen> highest(List<Seen> seen) {
    return seen.stream().max(Comparator.comparing(one -> one.temperature().low()));
  }

  private static Optional<Ingredient> ingredient(ComputedFormula formula, String name) {
    return formula.material(name).flatMap(Material::ingredient);
  }

  private static Optional<Statement> threshold(Ingredient ingredient) {
    return Stream.of("activates", "hydrates")
        .flatMap(word -> ingredient.facts().all(word))
        .filter(fact -> figure(fact).isPresent())
        .findFirst();
  }

  private static Temperature needed(Statement fact) {
    return figure(fact)
        .map(figure -> Temperature.ofCelsius(figure.value().highInBase().doubleValue()))
        .orElseThrow();
  }

  private static Optional<Located<Quantity>> figure(Statement fact) {
    return fact.figure(Connective.ABOVE, Unit.Dimension.TEMPERATURE);
  }
}
