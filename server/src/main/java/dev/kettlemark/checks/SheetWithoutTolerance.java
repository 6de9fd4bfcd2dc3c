package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Verb;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reports a sheet for production that gives the line nothing to decide by.
 *
 * <p>Each cook needs a tolerance or a range; and something must be measured or at least expected.
 */
public final class SheetWithoutTolerance implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "sheet-without-tolerance", "a sheet for production does not say what is still right");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return ShownSheet.of(subject).filter(sheet -> sheet.isFor("production")).stream()
        .flatMap(sheet -> sheet.formulas().stream().flatMap(formula -> check(sheet, formula)))
        .toList();
  }

  private static Stream<Finding> check(ShownSheet sheet, ComputedFormula computed) {
    List<CookStep> bare =
        CookStep.of(computed).filter(cook -> !isWide(cook.target().value())).toList();
    String name = computed.formula().name().value();
    if (!bare.isEmpty()) {
      CookStep cook = bare.get(0);
      return Stream.of(INFO.at(
                  sheet.name().span(),
                  "`%s` of `%s` cooks to one temperature without a tolerance",
                  cook.stage().name().value(),
                  name)
              .because("the line cannot decide what it may send on; write `± 1` behind the target"))
          .map(finding -> sheet
              .subject()
              .ask(Lookup.of(Kind.MATERIAL, name))
              .filter(entry -> !computed.formula().inherits(cook.target().span()))
              .map(entry -> finding.withRelated(entry.origin(cook.target().span()), "cooked here"))
              .orElse(finding));
    }
    return hasCriterion(computed.formula(), sheet.facts())
        ? Stream.empty()
        : Stream.of(INFO.at(
                sheet.name().span(),
                "`%s` has no tolerance, no `check` and nothing that it expects",
                name)
            .because("the line cannot decide what it may send on"));
  }

  private static boolean hasCriterion(Formula formula, Facts shown) {
    return formula.facts().first("expect").isPresent()
        || shown.first("expect").isPresent()
        || formula.steps().anyMatch(SheetWithoutTolerance::decides);
  }

  private static boolean decides(Statement step) {
    return step.is(Verb.CHECK.word())
        || step.clauses().stream()
            .flatMap(clause -> clause.operands().stream())
            .map(Located::value)
            .anyMatch(
                operand -> operand instanceof Operand.Figure figure && isWide(figure.quantity()));
  }

  private static boolean isWide(Quantity figure) {
    return figure.isRange() || figure.tolerance().isPresent();
  }
}
