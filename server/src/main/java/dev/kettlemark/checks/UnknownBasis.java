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
import dev.kettlemark.text.Excerpt;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a percentage of something that the formula does not know.
 *
 * <p>"Liquid" means three different things to three people, so the formula says what it means.
 */
public final class UnknownBasis implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "unknown-basis", "a percentage is of something that the formula does not know");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** Proposals are worked out for so many findings; nobody mends more at once. */
  private static final int MOST_PROPOSALS = 20;

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(computed -> check(subject, computed)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula computed) {
    Formula formula = computed.formula();
    Set<String> known = known(formula);
    List<Finding> findings = new ArrayList<>();
    formula
        .percent()
        .flatMap(basis -> unknown(known, basis.value()).map(name -> name.at(basis.span())))
        .map(name -> finding(name).withFixes(nearest(known, name)))
        .ifPresent(findings::add);
    for (Amounts.LineAmount line : computed.amounts().lines()) {
      Optional<Located<String>> name =
          ofItsOwn(line.line()).flatMap(basis -> unknown(known, basis));
      if (name.isPresent()) {
        boolean inherited = formula.inherits(line.line().span());
        Finding finding = finding(inherited ? name.get().at(line.line().span()) : name.get());
        findings.add(
            inherited || findings.size() >= MOST_PROPOSALS
                ? finding
                : finding
                    .withFixes(nearest(known, name.get()))
                    .withFixes(declaration(subject, computed, line, name.get())));
      }
    }
    return findings;
  }

  private static Optional<Basis> ofItsOwn(AmountLine line) {
    return line.measure().value() instanceof Measure.Share share ? share.basis() : Optional.empty();
  }

  private static Optional<Located<String>> unknown(Set<String> known, Basis basis) {
    return basis instanceof Basis.Named named && !known.contains(named.name().value())
        ? Optional.of(named.name())
        : Optional.empty();
  }

  private static Finding finding(Located<String> name) {
    return INFO.at(name.span(), "the formula knows no basis %s", Excerpt.of(name.value()))
        .because("a basis is declared by `basis NAME = …`, or is a stage or an ingredient of the"
            + " formula");
  }

  private static List<Fix> nearest(Set<String> known, Located<String> name) {
    return Suggestions.near(name.value(), known).stream()
        .map(near -> Fix.replace("Write `of " + near + "`", name.span(), near))
        .toList();
  }

  private static List<Fix> declaration(
      Subject subject, ComputedFormula computed, Amounts.LineAmount amount, Located<String> name) {
    Stage stage = computed.formula().stages().get(amount.stage());
    return BasisProposal.members(computed, stage).stream()
        .map(members -> name.value() + " = " + members)
        .map(basis -> new Fix(
            "Add `basis " + basis + "`",
            List.of(new Columns(subject.section()).addFact(Optional.empty(), "basis", basis))))
        .toList();
  }

  /** Every name that a percentage of this formula can be of. */
  private static Set<String> known(Formula formula) {
    Set<String> known = new LinkedHashSet<>(BasisWeights.names(formula));
    known.add("charge");
    known.add("finished");
    return known;
  }
}
