package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.BasisWeights;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.reading.Suggestions;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a percentage of something that the formula does not know.
 *
 * <p>"Liquid" means three different things to three people, so the formula says what it means.
 */
public final class UnknownBasis implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "unknown-basis", "a percentage is of something that the formula does not know");

  private static final String WHY =
      "a basis is declared by `basis NAME = …`, or is a stage or an ingredient of the formula";

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
    List<Finding> findings = new ArrayList<>();
    formula
        .percent()
        .flatMap(basis -> unknown(formula, basis.value()).map(name -> name.at(basis.span())))
        .map(name -> finding(formula, name.span(), name.value()))
        .ifPresent(findings::add);
    for (Amounts.LineAmount line : computed.amounts().lines()) {
      ofItsOwn(line.line())
          .flatMap(basis -> unknown(formula, basis))
          .map(name -> finding(subject, computed, line, name))
          .ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Basis> ofItsOwn(AmountLine line) {
    return line.measure().value() instanceof Measure.Share share ? share.basis() : Optional.empty();
  }

  private static Optional<Located<String>> unknown(Formula formula, Basis basis) {
    return basis instanceof Basis.Named named
            && BasisWeights.of(formula, named.name().value()).isEmpty()
        ? Optional.of(named.name())
        : Optional.empty();
  }

  private static Finding finding(
      Subject subject, ComputedFormula computed, Amounts.LineAmount amount, Located<String> name) {
    Formula formula = computed.formula();
    if (formula.inherits(amount.line().span())) {
      return INFO.at(amount.line().span(), "the formula knows no basis `%s`", name.value())
          .because(WHY);
    }
    Finding finding = finding(formula, name.span(), name.value());
    Stage stage = formula.stages().get(amount.stage());
    return BasisProposal.members(computed, stage)
        .map(members -> finding.withFix(new Fix(
            "Add `basis " + name.value() + " = " + members + "`",
            List.of(new Columns(subject.section())
                .addFact(Optional.empty(), "basis", name.value() + " = " + members)))))
        .orElse(finding);
  }

  private static Finding finding(Formula formula, Span span, String name) {
    Finding finding = INFO.at(span, "the formula knows no basis `%s`", name).because(WHY);
    for (String near : Suggestions.near(name, known(formula))) {
      finding = finding.withFix(Fix.replace("Write `of " + near + "`", span, near));
    }
    return finding;
  }

  private static List<String> known(Formula formula) {
    return Stream.of(
            formula.bases().stream().map(basis -> basis.name().value()),
            formula.stages().stream().map(stage -> stage.name().value()),
            formula.amounts().stream().map(line -> line.ingredient().value()),
            Stream.of("charge", "finished"))
        .flatMap(names -> names)
        .distinct()
        .toList();
  }
}
