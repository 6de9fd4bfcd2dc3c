package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Measure;
import dev.kettlemark.text.Excerpt;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a piece that cannot be bought or cut so: 1.57 of a pod.
 *
 * <p>Halves and quarters are cut every day, but for an egg.
 */
public final class BrokenCount implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("broken-count", "a count is neither whole nor half nor a quarter");

  /** A pod or a lemon is cut into halves and quarters. */
  private static final int FINEST_CUT = 4;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(computed -> computed.amounts().lines().stream()
            .map(Amounts.LineAmount::line)
            .filter(line -> !computed.formula().inherits(line.span()))
            .flatMap(line -> finding(subject, computed, line).stream()))
        .toList();
  }

  private static Optional<Finding> finding(
      Subject subject, ComputedFormula computed, AmountLine line) {
    if (!(line.measure().value() instanceof Measure.Count count)
        || count.pieces().signum() <= 0) {
      return Optional.empty();
    }
    boolean isEgg = isEgg(computed, line);
    if (isWhole(count.pieces().multiply(isEgg ? 1 : FINEST_CUT))) {
      return Optional.empty();
    }
    long whole = Math.max(1, Math.round(count.pieces().doubleValue()));
    return Optional.of(INFO.at(
            line.measure().span(),
            "%s of %s cannot be counted out",
            Columns.shown(line.measure().span().of(subject.text())),
            Excerpt.of(line.ingredient().value()))
        .because(
            isEgg
                ? "no two eggs weigh the same; weigh the egg in grams, or make the batch for whole"
                    + " eggs"
                : "pieces do not scale; round, and adjust the batch or the flavour to it")
        .withFix(new Fix(
            "Write `" + whole + " each`",
            List.of(new Columns(subject.section()).replaceMeasure(line, whole + " each")))));
  }

  private static boolean isEgg(ComputedFormula computed, AmountLine line) {
    return computed
        .material(line.ingredient().value())
        .flatMap(material -> material.ingredient())
        .filter(ingredient -> ingredient.facts().says("allergen", "egg"))
        .isPresent();
  }

  private static boolean isWhole(BigFraction value) {
    return value.getDenominator().equals(BigInteger.ONE);
  }
}
