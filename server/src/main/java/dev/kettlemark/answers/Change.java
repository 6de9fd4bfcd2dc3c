package dev.kettlemark.answers;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.quantity.Temperature;
import java.util.List;

/** One thing to change in a formula. */
public sealed interface Change {

  /** Heat or cook to another temperature. */
  record Cook(StepPlace place, Temperature target) implements Change {}

  /** Weigh another amount; the line is counted through all stages. */
  record Weigh(int line, Figure figure) implements Change {}

  /** Take another material, and so much of it. */
  record Replace(int line, Material material, Figure figure) implements Change {}

  /** Weigh in something more, as the last amount of a stage. */
  record Add(int stage, Material material, Figure figure) implements Change {}

  /** Warm a bowl or pan before anything comes into it. */
  record Warm(String vessel, Temperature temperature) implements Change {}

  /** The formula as it is with all these changes. */
  static ComputedFormula tried(ComputedFormula formula, List<Change> changes) {
    Experiment experiment = formula.experiment();
    for (Change change : changes) {
      if (!(change instanceof Add)) {
        experiment = change.in(experiment);
      }
    }
    // An added line moves those behind it, so it comes last.
    for (Change change : changes) {
      if (change instanceof Add) {
        experiment = change.in(experiment);
      }
    }
    return experiment.compute();
  }

  private Experiment in(Experiment experiment) {
    if (this instanceof Cook cook) {
      return experiment.cooking(cook.place(), cook.target());
    }
    if (this instanceof Weigh weigh) {
      return experiment.weighing(weigh.line(), weigh.figure().measure());
    }
    if (this instanceof Replace replace) {
      return experiment
          .replacing(replace.line(), replace.material())
          .weighing(replace.line(), replace.figure().measure());
    }
    if (this instanceof Add add) {
      return experiment.adding(add.stage(), add.material(), add.figure().measure());
    }
    Warm warm = (Warm) this;
    return experiment.warming(warm.vessel(), warm.temperature());
  }
}
