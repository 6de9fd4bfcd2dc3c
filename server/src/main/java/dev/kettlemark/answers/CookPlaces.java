package dev.kettlemark.answers;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a formula cooks, and what lies in the pan then. */
public final class CookPlaces {

  private CookPlaces() {}

  /** Every step that boils water off up to a temperature, in order. */
  public static List<StepPlace> of(ComputedFormula formula) {
    List<StepPlace> places = new ArrayList<>();
    List<StageResult> stages = formula.process().stages();
    for (int i = 0; i < stages.size(); i++) {
      List<StepResult> steps = stages.get(i).steps();
      for (int j = 0; j < steps.size(); j++) {
        if (cooks(steps.get(j).step())) {
          places.add(new StepPlace(i, j));
        }
      }
    }
    return places;
  }

  /** The last cook of a stage. */
  static Outcome<StepPlace> lastOf(ComputedFormula formula, String stage) {
    Optional<StepPlace> found = of(formula).stream()
        .filter(place -> stageName(formula, place).equals(stage))
        .reduce((one, later) -> later);
    return found
        .map(Outcome::known)
        .orElseGet(() -> Outcome.unknown(
            Reason.MISSING_FIGURE,
            "no step of `%s` cooks to a temperature; those that do are in %s",
            stage,
            stagesThatCook(formula)));
  }

  private static String stagesThatCook(ComputedFormula formula) {
    List<String> names = of(formula).stream()
        .map(place -> "`" + stageName(formula, place) + "`")
        .distinct()
        .toList();
    return names.isEmpty() ? "no stage" : String.join(", ", names);
  }

  static StepResult step(ComputedFormula formula, StepPlace place) {
    return formula.process().stages().get(place.stage()).steps().get(place.step());
  }

  static String stageName(ComputedFormula formula, StepPlace place) {
    return formula.process().stages().get(place.stage()).name();
  }

  /** What lies in the pan before a cook. */
  public static Outcome<Composition> charge(ComputedFormula formula, StepPlace place) {
    return mass(step(formula, place).before());
  }

  /** Parcels as one composition. */
  static Outcome<Composition> mass(List<StageParcel> parcels) {
    List<Portion> portions = new ArrayList<>();
    for (StageParcel parcel : parcels) {
      Outcome<Portion> portion = parcel.portion();
      if (portion instanceof Outcome.Unknown<Portion> unknown) {
        return unknown.retyped();
      }
      portion.toOptional().filter(p -> p.mass().grams() > 0).ifPresent(portions::add);
    }
    return portions.isEmpty()
        ? Outcome.unknown(Reason.MISSING_FIGURE, "there is nothing to cook")
        : Outcome.known(Composition.mix(portions));
  }

  /** Whether a step boils water off up to a temperature. */
  public static boolean cooks(Statement step) {
    Verb.Effect effect = Verb.of(step.word().value()).map(Verb::effect).orElse(Verb.Effect.NONE);
    return effect == Verb.Effect.COOK
        || (effect == Verb.Effect.BOIL
            && Boiling.target(step).isPresent()
            && step.figure(Connective.TO, Unit.Dimension.TEMPERATURE).isPresent());
  }
}
