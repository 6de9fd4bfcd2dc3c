package dev.kettlemark.scaling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.CookedWeight;
import dev.kettlemark.analysis.FinishedWeight;
import dev.kettlemark.analysis.ProcessResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;

/** How a batch came about, as a tree to show. */
final class ScalingDerivation {

  private ScalingDerivation() {}

  static Derivation of(
      ComputedFormula formula,
      Target target,
      ProcessResult process,
      CookedWeight cooked,
      FinishedWeight finished,
      Ratio loss) {
    List<Derivation> boiled = new ArrayList<>();
    process.stages().stream()
        .flatMap(stage -> stage.steps().stream())
        .filter(step -> step.evaporated().grams() > 0)
        .map(StepResult::derivation)
        .forEach(derivation -> derivation.ifPresent(boiled::add));
    Derivation cookedNode = new Derivation(
        "left after cooking",
        Display.mass(cooked.mass()),
        "charge − what boils away",
        "mass balance over the stages",
        boiled.isEmpty() ? Confidence.EXACT : Confidence.MODEL,
        boiled);
    Derivation finishedNode = new Derivation(
        "finished",
        Display.mass(finished.mass()),
        "left after cooking × (1 − loss)",
        "handling loss of " + Display.percent(loss),
        Confidence.EXACT,
        List.of(cookedNode));
    return new Derivation(
        "charge",
        Display.mass(process.charge().mass()),
        "backwards from the target",
        words(target) + "; percentages of " + formula.formula().name().value()
            + " stay as they are",
        boiled.isEmpty() ? Confidence.EXACT : Confidence.MODEL,
        List.of(finishedNode));
  }

  private static String words(Target target) {
    if (target instanceof Target.Pieces pieces) {
      return "%s pieces of %s g"
          .formatted(
              Display.trimmed(pieces.count().doubleValue(), 2),
              Display.trimmed(pieces.pieceGrams().doubleValue(), 2));
    }
    if (target instanceof Target.Finished wanted) {
      return "%s g finished".formatted(Display.trimmed(wanted.grams().doubleValue(), 2));
    }
    if (target instanceof Target.Moulds moulds) {
      return "%d × mould %s".formatted(moulds.count(), moulds.mould());
    }
    if (target instanceof Target.Frames frames) {
      return "%d × frame %s".formatted(frames.count(), frames.frame());
    }
    if (target instanceof Target.BowlLimit limit) {
      return "as much as bowl %s whips".formatted(limit.bowl());
    }
    if (target instanceof Target.InHand hand) {
      return "%s g of %s at hand"
          .formatted(Display.trimmed(hand.grams().doubleValue(), 2), hand.ingredient());
    }
    return "the charge as asked for";
  }
}
