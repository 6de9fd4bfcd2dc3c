package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports lines that do not add up to the whole.
 *
 * <p>Lines of another basis are worked out and count like any other. A formula with a {@code q.s.}
 * line always adds up, and one by weight is its own whole.
 */
public final class TotalOff implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("total-off", "the lines do not add up to 100 %");

  /** What counts as water for a line that takes up the rest. */
  private static final double NEARLY_ALL = 0.99;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(computed -> !ImpossibleDose.isOverWhole(computed))
        .filter(computed -> isOff(subject, computed))
        .map(computed -> List.of(finding(subject, computed)))
        .orElse(List.of());
  }

  /** Whether the total of a formula, here or elsewhere, misses the whole by more than rounding. */
  static boolean isOff(Subject subject, ComputedFormula computed) {
    return hasTotal(computed)
        && gap(computed).abs().doubleValue()
            > subject.threshold(Threshold.TOTAL_TOLERANCE).fraction();
  }

  /** Whether every line is known and none takes up the rest. */
  static boolean hasTotal(ComputedFormula computed) {
    Formula formula = computed.formula();
    return !formula.amounts().isEmpty()
        && !formula.isByWeight()
        && computed.amounts().complete()
        && !hangsOnYield(computed)
        && formula.amounts().stream()
            .noneMatch(line -> line.measure().value() instanceof Measure.Sufficient);
  }

  /**
   * Percentages of the finished weight make a total that is only as exact as the model of the boil, a
   * percent or so; that is no ground for an error.
   */
  private static boolean hangsOnYield(ComputedFormula computed) {
    return computed.process().evaporated().grams() > 0
        && computed.formula().amounts().stream()
            .anyMatch(line -> line.measure().value() instanceof Measure.Share share
                && computed.formula().basisOf(share) instanceof Basis.Finished);
  }

  /** What the lines lack of the whole. */
  static BigFraction gap(ComputedFormula computed) {
    return BigFraction.ONE.subtract(computed.amounts().total());
  }

  private static Finding finding(Subject subject, ComputedFormula computed) {
    BigFraction gap = gap(computed);
    return INFO.at(
            computed.formula().name().span(),
            "the lines add up to %s, %s too %s",
            Display.percent(computed.amounts().total()),
            Display.percent(gap.abs()),
            gap.signum() > 0 ? "little" : "much")
        .because("every weight of the batch is off by that share" + ofAnotherBasis(computed))
        .withFixes(fixes(subject, computed, gap));
  }

  private static String ofAnotherBasis(ComputedFormula computed) {
    BigFraction sum = BigFraction.ZERO;
    for (Amounts.LineAmount line : computed.amounts().lines()) {
      if (line.line().measure().value() instanceof Measure.Share share
          && computed.formula().basisOf(share) instanceof Basis.Named) {
        sum = sum.add(line.share().orElse(BigFraction.ZERO));
      }
    }
    return sum.signum() == 0
        ? ""
        : "; the lines of another basis count in it with " + Display.percent(sum);
  }

  private static List<Fix> fixes(Subject subject, ComputedFormula computed, BigFraction gap) {
    List<Fix> fixes = new ArrayList<>();
    ChargeLines lines = ChargeLines.of(computed);
    waterAsRest(subject, computed, lines, gap).ifPresent(fixes::add);
    scaled(subject, computed, lines).ifPresent(fixes::add);
    onLargest(subject, lines, gap).ifPresent(fixes::add);
    return fixes;
  }

  /** A variant's changes have no room for {@code q.s.}, so there it is not offered. */
  private static Optional<Fix> waterAsRest(
      Subject subject, ComputedFormula computed, ChargeLines lines, BigFraction gap) {
    if (subject.variant().isPresent()) {
      return Optional.empty();
    }
    return lines
        .largest(line -> isWater(computed, line.line()))
        .filter(line -> line.share().orElse(BigFraction.ZERO).add(gap).signum() > 0)
        .map(line -> new Fix(
            "Let `" + line.line().ingredient().value() + "` be the rest, `q.s.`",
            List.of(new Columns(subject.section()).replaceMeasure(line.line(), "q.s."))));
  }

  /**
   * The water that can take up what another line leaves; empty where a line does so already, where the
   * lines do not make a whole, and in a variant.
   */
  static Optional<Amounts.LineAmount> waterThatTakesUp(
      Subject subject, ComputedFormula computed, Amounts.LineAmount changed) {
    return subject.variant().isPresent() || !hasTotal(computed) || isOff(subject, computed)
        ? Optional.empty()
        : ChargeLines.of(computed)
            .largest(line -> !line.equals(changed) && isWater(computed, line.line()));
  }

  private static boolean isWater(ComputedFormula computed, AmountLine line) {
    return computed
        .material(line.ingredient().value())
        .flatMap(material -> material.composition().toOptional())
        .filter(composition -> composition.fraction(Component.WATER) >= NEARLY_ALL)
        .isPresent();
  }

  /** All lines of charge times one factor; what rounding leaves over goes to the largest. */
  private static Optional<Fix> scaled(
      Subject subject, ComputedFormula computed, ChargeLines lines) {
    long ofCharge = computed.formula().amounts().stream()
        .filter(line -> ChargeLines.isOfCharge(computed, line))
        .count();
    BigFraction fixed = weights(computed);
    BigFraction scaling = computed.amounts().total().subtract(fixed);
    BigFraction room = BigFraction.ONE.subtract(fixed);
    Optional<Amounts.LineAmount> largest = lines.largest();
    if (ofCharge != lines.all().size()
        || largest.isEmpty()
        || scaling.signum() <= 0
        || room.signum() <= 0) {
      return Optional.empty();
    }
    BigFraction factor = room.divide(scaling);
    BigFraction left = BigFraction.ZERO;
    for (Amounts.LineAmount line : lines.all()) {
      BigFraction exact = line.share().orElse(BigFraction.ZERO).multiply(factor);
      left = left.add(exact).subtract(ChargeLines.rounded(line.line(), exact));
    }
    List<TextEdit> edits = new ArrayList<>();
    for (Amounts.LineAmount line : lines.all()) {
      BigFraction exact = line.share().orElse(BigFraction.ZERO).multiply(factor);
      BigFraction share = ChargeLines.rounded(line.line(), exact);
      BigFraction whole = line.equals(largest.get()) ? share.add(left) : share;
      edits.add(ChargeLines.rewritten(subject.text(), line.line(), whole));
    }
    return Optional.of(
        new Fix("Scale all lines by 100 / " + Display.percent(scaling).replace(" %", ""), edits));
  }

  private static BigFraction weights(ComputedFormula computed) {
    return computed.amounts().lines().stream()
        .filter(line -> !(line.line().measure().value() instanceof Measure.Share))
        .map(line -> line.share().orElse(BigFraction.ZERO))
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  /** Puts the gap on the largest line. */
  static Optional<Fix> onLargest(Subject subject, ChargeLines lines, BigFraction gap) {
    return lines
        .largest()
        .filter(line -> line.share().orElse(BigFraction.ZERO).add(gap).signum() > 0)
        .map(line -> new Fix(
            String.format(
                gap.signum() > 0 ? "Add %s to `%s`" : "Take %s off `%s`",
                Display.percent(gap.abs()),
                line.line().ingredient().value()),
            List.of(ChargeLines.rewritten(
                subject.text(),
                line.line(),
                line.share().orElse(BigFraction.ZERO).add(gap)))));
  }
}
