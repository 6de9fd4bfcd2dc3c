package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Excerpt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports more than one {@code q.s.} line in a formula.
 *
 * <p>There is one rest and two takers, and nothing says who gets how much.
 */
public final class TwoSufficient implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("two-sufficient", "two `q.s.` lines share one rest, and nothing says how");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(computed -> check(subject, computed)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula computed) {
    List<AmountLine> takers = computed.formula().amounts().stream()
        .filter(line -> line.measure().value() instanceof Measure.Sufficient)
        .toList();
    Optional<BigFraction> rest = takers.size() > 1 ? rest(computed) : Optional.empty();
    List<Finding> findings = new ArrayList<>();
    for (AmountLine later : takers.subList(Math.min(1, takers.size()), takers.size())) {
      findings.add(finding(subject, takers, later, rest));
    }
    return findings;
  }

  private static Finding finding(
      Subject subject, List<AmountLine> takers, AmountLine later, Optional<BigFraction> rest) {
    AmountLine first = takers.get(0);
    Finding finding = INFO.at(
            later.measure().span(),
            "%s and %s both take up the rest%s",
            Excerpt.of(first.ingredient().value()),
            Excerpt.of(later.ingredient().value()),
            rest.map(share -> ", " + Display.percent(share)).orElse(""))
        .because(
            "nothing says how the rest is shared; keep one `q.s.` and write the other in figures")
        .withRelated(subject.entry().origin(first.measure().span()), "the first `q.s.` line");
    if (rest.isEmpty()) {
      return finding;
    }
    String part = Display.percent(rest.get().divide(takers.size()));
    for (AmountLine line : List.of(later, first)) {
      if (!isInherited(subject, line)) {
        finding = finding.withFix(new Fix(
            "Write `" + part + "` of `" + line.ingredient().value()
                + "`, an equal part of the rest, and adjust it",
            List.of(new Columns(subject.section()).replaceMeasure(line, part))));
      }
    }
    return finding;
  }

  private static boolean isInherited(Subject subject, AmountLine line) {
    return subject.formula().filter(f -> f.formula().inherits(line.span())).isPresent();
  }

  /** What the other lines leave; empty where one of them is unknown or nothing is left. */
  private static Optional<BigFraction> rest(ComputedFormula computed) {
    List<Amounts.LineAmount> others = computed.amounts().lines().stream()
        .filter(line -> !(line.line().measure().value() instanceof Measure.Sufficient))
        .toList();
    if (others.stream().anyMatch(line -> !line.share().isKnown())) {
      return Optional.empty();
    }
    BigFraction taken = others.stream()
        .map(line -> line.share().orElse(BigFraction.ZERO))
        .reduce(BigFraction.ZERO, BigFraction::add);
    return Optional.of(BigFraction.ONE.subtract(taken)).filter(rest -> rest.signum() > 0);
  }
}
