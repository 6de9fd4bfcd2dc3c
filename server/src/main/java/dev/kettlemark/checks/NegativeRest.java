package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Display;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a {@code q.s.} line that comes out below nothing.
 *
 * <p>The other lines already hold more than the whole, and nobody can weigh less than nothing.
 */
public final class NegativeRest implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("negative-rest", "the other lines already hold more than the whole");

  /** A material of so much sugar counts as one; common practice, no source. */
  private static final double MOSTLY_SUGAR = 0.5;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().filter(computed -> !ImpossibleDose.isOverWhole(computed)).stream()
        .flatMap(computed -> computed.amounts().lines().stream()
            .filter(line -> line.line().measure().value() instanceof Measure.Sufficient)
            .filter(line -> share(line).signum() < 0)
            .map(line -> finding(subject, computed, line)))
        .toList();
  }

  private static Finding finding(
      Subject subject, ComputedFormula computed, Amounts.LineAmount rest) {
    BigFraction others = computed.amounts().total().subtract(share(rest));
    return INFO.at(
            rest.line().measure().span(),
            "the rest comes out at %s, since the other lines add up to %s",
            Display.percent(share(rest)),
            Display.percent(others))
        .because("nobody can weigh less than nothing")
        .withFixes(fixes(subject, computed, share(rest).negate()));
  }

  /** Takes what is too much off the largest sugar, or off the largest line of all. */
  private static List<Fix> fixes(Subject subject, ComputedFormula computed, BigFraction excess) {
    ChargeLines lines = ChargeLines.of(computed);
    Optional<Amounts.LineAmount> sugar =
        lines.largest(line -> isSugar(computed, line.line().ingredient().value()));
    Optional<Amounts.LineAmount> largest =
        lines.largest().filter(l -> !sugar.equals(Optional.of(l)));
    List<Fix> fixes = new ArrayList<>();
    for (Optional<Amounts.LineAmount> line : List.of(sugar, largest)) {
      line.filter(found -> share(found).compareTo(excess) > 0)
          .map(found -> new Fix(
              "Take " + Display.percent(excess) + " off `"
                  + found.line().ingredient().value() + "`",
              List.of(ChargeLines.rewritten(
                  subject.text(), found.line(), share(found).subtract(excess)))))
          .ifPresent(fixes::add);
    }
    return fixes;
  }

  private static boolean isSugar(ComputedFormula computed, String name) {
    return computed
        .material(name)
        .flatMap(material -> material.composition().toOptional())
        .filter(composition -> composition.saccharides().fraction() >= MOSTLY_SUGAR)
        .isPresent();
  }

  private static BigFraction share(Amounts.LineAmount line) {
    return line.share().orElse(BigFraction.ZERO);
  }
}
