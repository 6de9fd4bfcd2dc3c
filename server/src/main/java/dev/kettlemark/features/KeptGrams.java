package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.fraction.BigFraction;

/** Whether a formula weighs and makes the same after it was written otherwise. */
final class KeptGrams {

  /** A share of the charge that no scale of any kitchen shows. */
  static final double SLACK = 1e-9;

  /** What is made follows from models that search to nine digits. */
  private static final double MADE_SLACK = 1e-8;

  private KeptGrams() {}

  /** Whether each line weighs the same, and the whole makes the same. */
  static boolean everyLine(ComputedFormula before, ComputedFormula after) {
    List<LineAmount> old = before.amounts().lines();
    List<LineAmount> now = after.amounts().lines();
    if (old.size() != now.size()
        || before.amounts().charge().isPresent() != after.amounts().charge().isPresent()) {
      return false;
    }
    for (int i = 0; i < old.size(); i++) {
      boolean sameName = old.get(i)
          .line()
          .ingredient()
          .value()
          .equals(now.get(i).line().ingredient().value());
      if (!sameName || !isClose(grams(before, old.get(i)), grams(after, now.get(i)), before)) {
        return false;
      }
    }
    return makesTheSame(before, after);
  }

  /** Whether each material weighs the same, all its lines together, and the whole makes the same. */
  static boolean everyMaterial(ComputedFormula before, ComputedFormula after) {
    Map<String, Double> old = materials(before);
    Map<String, Double> now = materials(after);
    return before.amounts().complete()
        && after.amounts().complete()
        && old.keySet().equals(now.keySet())
        && old.entrySet().stream()
            .allMatch(one -> Math.abs(one.getValue() - now.getOrDefault(one.getKey(), Double.NaN))
                <= SLACK * charge(before))
        && makesTheSame(before, after);
  }

  /** Whether the mass that is left is the same, in weight and in composition. */
  static boolean makesTheSame(ComputedFormula before, ComputedFormula after) {
    Outcome<Portion> old = made(before);
    Outcome<Portion> now = made(after);
    if (!old.isKnown() || !now.isKnown()) {
      return old.isKnown() == now.isKnown();
    }
    return Outcome.both(old, now, (one, other) -> isSame(one, other, charge(before)))
        .orElse(false);
  }

  private static boolean isSame(Portion one, Portion other, double charge) {
    if (Math.abs(one.mass().grams() - other.mass().grams()) > MADE_SLACK * charge) {
      return false;
    }
    Composition first = one.composition();
    Composition second = other.composition();
    for (Component component : Component.values()) {
      if (Math.abs(first.fraction(component) - second.fraction(component)) > MADE_SLACK) {
        return false;
      }
    }
    return true;
  }

  private static Outcome<Portion> made(ComputedFormula formula) {
    return formula
        .process()
        .last()
        .map(stage -> stage.left().portion())
        .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "the formula has no stage"));
  }

  private static Map<String, Double> materials(ComputedFormula formula) {
    Map<String, Double> grams = new HashMap<>();
    formula
        .amounts()
        .lines()
        .forEach(line -> grams.merge(
            line.line().ingredient().value(), grams(formula, line).orElse(0.0), Double::sum));
    return grams;
  }

  private static boolean isClose(
      Outcome<Double> one, Outcome<Double> other, ComputedFormula formula) {
    return (one.isKnown() && other.isKnown())
        ? Math.abs(one.orElse(0.0) - other.orElse(0.0)) <= SLACK * charge(formula)
        : one.isKnown() == other.isKnown();
  }

  private static Outcome<Double> grams(ComputedFormula formula, LineAmount line) {
    double charge = charge(formula);
    return line.share().map(BigFraction::doubleValue).map(share -> share * charge);
  }

  private static double charge(ComputedFormula formula) {
    return formula
        .amounts()
        .charge()
        .map(BigFraction::doubleValue)
        .orElse(ComputedFormula.NOMINAL_CHARGE.grams());
  }
}
