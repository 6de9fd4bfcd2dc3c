package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.scaling.WeighingList;
import dev.kettlemark.text.Excerpt;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports what is listed in a stage although a formula used there brings it already, in the same
 * amount.
 *
 * <p>More of an ingredient than a premix brings is quite usual; as much again is not. Where not all
 * parts of the formula are repeated, only what acts by its dose counts.
 */
public final class CountedTwice implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "counted-twice", "an ingredient is listed beside a mix that already brings as much of it");

  /** By how much two amounts that were worked out from each other may differ through rounding. */
  private static final double SAME = 0.02;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(computed -> computed.amounts().lines().stream()
            .filter(mix -> computed
                .material(mix.line().ingredient().value())
                .filter(material -> material.made().isPresent())
                .isPresent())
            .flatMap(mix -> findings(subject, computed, mix).stream()))
        .toList();
  }

  private static List<Finding> findings(
      Subject subject, ComputedFormula computed, Amounts.LineAmount mix) {
    String name = mix.line().ingredient().value();
    Optional<ComputedFormula> made =
        subject.ask(Formulas.computed(name)).filter(formula -> formula.amounts().complete());
    if (made.isEmpty() || !mix.share().isKnown()) {
      return List.of();
    }
    List<Amounts.LineAmount> parts = made.get().amounts().lines();
    List<Amounts.LineAmount> repeated = computed.amounts().lines().stream()
        .filter(line -> line.stage() == mix.stage())
        .filter(line -> parts.stream().anyMatch(part -> isSame(line, part, mix)))
        .toList();
    boolean isAll = parts.size() > 1 && repeated.size() >= parts.size();
    return repeated.stream()
        .filter(line -> isAll || isCritical(computed, line))
        .filter(line -> !computed.formula().inherits(line.line().span()))
        .map(line -> finding(subject, computed, mix, line))
        .toList();
  }

  private static boolean isSame(
      Amounts.LineAmount line, Amounts.LineAmount part, Amounts.LineAmount mix) {
    double brought = share(part).multiply(share(mix)).doubleValue();
    return line.line().ingredient().value().equals(part.line().ingredient().value())
        && brought > 0
        && Math.abs(share(line).doubleValue() / brought - 1) <= SAME;
  }

  private static BigFraction share(Amounts.LineAmount line) {
    return line.share().orElse(BigFraction.ZERO);
  }

  private static boolean isCritical(ComputedFormula computed, Amounts.LineAmount line) {
    Optional<Ingredient> ingredient = computed
        .material(line.line().ingredient().value())
        .flatMap(material -> material.ingredient());
    return ingredient.filter(WeighingList::isCritical).isPresent();
  }

  private static Finding finding(
      Subject subject, ComputedFormula computed, Amounts.LineAmount mix, Amounts.LineAmount line) {
    String name = line.line().ingredient().value();
    Finding finding = INFO.at(
            line.line().ingredient().span(),
            "%s of %s is listed, and %s brings as much already",
            Display.percent(share(line)),
            Excerpt.of(name),
            Excerpt.of(mix.line().ingredient().value()))
        .because("the dose is twice what is meant, if the mix was put in the place of its parts")
        .withRelated(subject.entry().origin(mix.line().span()), "the mix");
    return subject.variant().isPresent()
        ? finding
        : LaterAddition.gone(
                subject, computed, line.line(), computed.formula().stages().get(line.stage()))
            .map(edits -> finding.withFix(new Fix("Drop `" + name + "`", edits)))
            .orElse(finding);
  }
}
