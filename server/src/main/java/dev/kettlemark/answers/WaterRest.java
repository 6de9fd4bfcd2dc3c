package dev.kettlemark.answers;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.fraction.BigFraction;

/**
 * Keeps the charge of a formula where amounts change: water takes up the difference.
 *
 * <p>The water of the same stage comes first; then a {@code q.s.} line, which fills up by itself; then
 * any other water.
 */
final class WaterRest {

  private static final double PURE = 0.995;

  private WaterRest() {}

  /**
   * The changes of water lines that make up for other changes.
   *
   * @param stage index of the stage where the others are
   * @param more by what share of the charge the other amounts grow; less than zero where they shrink
   */
  static Outcome<List<Change>> changes(ComputedFormula formula, int stage, BigFraction more) {
    if (more.signum() == 0) {
      return Outcome.known(List.of());
    }
    Optional<Integer> here = waterLine(formula, stage);
    Optional<Integer> sufficient = IntStream.range(0, formula.amounts().lines().size())
        .boxed()
        .filter(i -> isSufficient(formula.amounts().lines().get(i)))
        .findFirst();
    Optional<Integer> line = here.or(() -> sufficient).or(() -> waterLine(formula, -1));
    if (line.isEmpty()) {
      return Outcome.unknown(
          Reason.NO_SOLUTION,
          "no line of water can make up for the difference of %s",
          Display.percent(more.abs()));
    }
    LineAmount water = formula.amounts().lines().get(line.get());
    BigFraction before = water.share().orElse(BigFraction.ZERO);
    BigFraction after = before.subtract(more);
    if (after.signum() < 0 || (after.signum() == 0 && !isSufficient(water))) {
      return Outcome.unknown(
          Reason.NO_SOLUTION,
          "`%s` would have to give up %s and holds only %s",
          water.line().ingredient().value(),
          Display.percent(more),
          Display.percent(before));
    }
    return Outcome.known(
        isSufficient(water)
            ? List.of()
            : List.of(new Change.Weigh(line.get(), Figure.exact(water, after))));
  }

  /** The first line of pure water of a stage, or of any for −1; a free one or one that fills up. */
  static Optional<Integer> waterLine(ComputedFormula formula, int stage) {
    List<LineAmount> lines = formula.amounts().lines();
    return IntStream.range(0, lines.size())
        .boxed()
        .filter(i -> stage < 0 || lines.get(i).stage() == stage)
        .filter(i -> isWater(formula, lines.get(i)))
        .filter(i -> isSufficient(lines.get(i)) || Figure.isFree(formula, lines.get(i)))
        .findFirst();
  }

  private static boolean isSufficient(LineAmount line) {
    return line.line().measure().value() instanceof Measure.Sufficient
        && line.share().isKnown();
  }

  private static boolean isWater(ComputedFormula formula, LineAmount line) {
    return formula
        .material(line.line().ingredient().value())
        .map(Material::composition)
        .flatMap(Outcome::toOptional)
        .filter(composition -> composition.water().fraction() >= PURE)
        .isPresent();
  }
}
