package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Optional;

/**
 * Reports weights and volumes among percentages.
 *
 * <p>The total cannot be read any more, and the grams stay behind when the batch changes. Counts are
 * left alone: what is bought by the piece is written by the piece.
 */
public final class MixedUnits implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "mixed-units", "a weight stands among percentages, so the total cannot be read");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(computed -> check(subject, computed)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula computed) {
    Formula formula = computed.formula();
    if (formula.isByWeight()) {
      return List.of();
    }
    List<Amounts.LineAmount> weights = computed.amounts().lines().stream()
        .filter(line -> !formula.inherits(line.line().span()))
        .filter(line -> line.line().measure().value() instanceof Measure.Weight
            || line.line().measure().value() instanceof Measure.Capacity)
        .toList();
    List<TextEdit> edits =
        weights.stream().flatMap(weight -> asPercent(subject, weight).stream()).toList();
    Fix all = new Fix("Write all " + edits.size() + " as percentages", edits);
    return weights.stream().map(line -> finding(subject, line, all)).toList();
  }

  private static Finding finding(Subject subject, Amounts.LineAmount amount, Fix all) {
    AmountLine line = amount.line();
    Finding finding = INFO.at(
        line.measure().span(),
        "%s of %s stands among percentages",
        Columns.shown(line.measure().span().of(subject.text())),
        Excerpt.of(line.ingredient().value()));
    Optional<TextEdit> edit = asPercent(subject, amount);
    if (edit.isEmpty()) {
      return finding.because(
          "nobody can add it to them without a batch weight and, for a volume," + " a density");
    }
    finding = finding
        .because("the total cannot be read, and the weight stays behind when the batch changes")
        .withFix(new Fix("Write `" + percent(amount) + "`", List.of(edit.get())));
    return all.edits().size() > 1 ? finding.withFix(all) : finding;
  }

  private static Optional<TextEdit> asPercent(Subject subject, Amounts.LineAmount amount) {
    return amount
        .share()
        .toOptional()
        .map(share ->
            new Columns(subject.section()).replaceMeasure(amount.line(), Display.percent(share)));
  }

  private static String percent(Amounts.LineAmount amount) {
    return amount.share().map(Display::percent).orElse("");
  }
}
