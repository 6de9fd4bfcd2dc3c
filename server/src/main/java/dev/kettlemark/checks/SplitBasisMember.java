package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a member of a basis that stands in several stages and does not say in which it counts.
 *
 * <p>The water of the syrup then counts in the liquid of the foam, and the gum rises with it, often two
 * or three times.
 */
public final class SplitBasisMember implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "split-basis-member",
      "a member of a basis stands in several stages and counts in all of them");

  /** More stages than these make a message that nobody reads. */
  private static final int MOST_SHOWN = 3;

  /** Proposals are worked out for so many findings; nobody mends more at once. */
  private static final int MOST_PROPOSALS = 20;

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
    if (formula.bases().isEmpty()) {
      return List.of();
    }
    Map<String, SortedMap<Integer, BigFraction>> places = places(computed);
    Set<String> stages =
        formula.stages().stream().map(stage -> stage.name().value()).collect(Collectors.toSet());
    List<Finding> findings = new ArrayList<>();
    for (BasisDefinition basis : formula.bases()) {
      for (BasisDefinition.Member member : basis.members()) {
        Located<String> name = member.ingredient();
        SortedMap<Integer, BigFraction> shares =
            places.getOrDefault(name.value(), Collections.emptySortedMap());
        if (shares.size() > 1 && member.stage().isEmpty() && !stages.contains(name.value())) {
          Finding finding = related(subject, formula, name, finding(formula, basis, name, shares));
          boolean proposes = !formula.inherits(basis.span()) && findings.size() < MOST_PROPOSALS;
          findings.add(
              proposes ? finding.withFixes(fixes(formula, basis, name, shares.keySet())) : finding);
        }
      }
    }
    return findings;
  }

  private static Finding related(
      Subject subject, Formula formula, Located<String> member, Finding finding) {
    Finding result = finding;
    for (AmountLine line : formula.amounts()) {
      if (line.ingredient().value().equals(member.value()) && subject.isWrittenHere(line.span())) {
        result = result.withRelated(subject.entry().origin(line.span()), "weighed in here");
      }
    }
    return result;
  }

  /** For each ingredient the stages it stands in, each with its share of the charge. */
  private static Map<String, SortedMap<Integer, BigFraction>> places(ComputedFormula computed) {
    Map<String, SortedMap<Integer, BigFraction>> places = new HashMap<>();
    for (Amounts.LineAmount line : computed.amounts().lines()) {
      places
          .computeIfAbsent(line.line().ingredient().value(), name -> new TreeMap<>())
          .merge(line.stage(), line.share().orElse(BigFraction.ZERO), BigFraction::add);
    }
    return places;
  }

  private static Finding finding(
      Formula formula,
      BasisDefinition basis,
      Located<String> member,
      SortedMap<Integer, BigFraction> shares) {
    String stages = shares.keySet().stream()
        .limit(MOST_SHOWN)
        .map(index -> Excerpt.of(formula.stages().get(index).name().value()))
        .collect(Collectors.joining(" and in "));
    String amounts = shares.entrySet().stream()
        .limit(MOST_SHOWN)
        .map(share -> Display.percent(share.getValue()) + " in "
            + Excerpt.of(formula.stages().get(share.getKey()).name().value()))
        .collect(Collectors.joining(", "));
    int more = shares.size() - MOST_SHOWN;
    return INFO.at(
            member.span(),
            "%s of the basis %s stands in %s%s",
            Excerpt.of(member.value()),
            Excerpt.of(basis.name().value()),
            stages,
            more > 0 ? " and in " + more + " more" : "")
        .because("all of it counts: " + amounts + (more > 0 ? ", and so on" : "")
            + " of charge; a dose of the basis rises with it");
  }

  /** The stage that uses the basis comes first; to count every stage stays possible. */
  private static List<Fix> fixes(
      Formula formula, BasisDefinition basis, Located<String> member, Set<Integer> stages) {
    List<String> places = stages.stream()
        .map(index -> formula.stages().get(index))
        .sorted((one, other) -> Boolean.compare(uses(other, basis), uses(one, basis)))
        .map(stage -> member.value() + " in " + stage.name().value())
        .toList();
    Span span = member.span();
    List<Fix> fixes = new ArrayList<>();
    places.stream()
        .limit(MOST_SHOWN)
        .forEach(place -> fixes.add(Fix.replace("Write `" + place + "`", span, place)));
    String all = String.join(", ", places);
    String title = places.size() <= MOST_SHOWN ? "Write `" + all + "`" : "Name every stage";
    fixes.add(Math.min(fixes.size(), 2), Fix.replace(title, span, all));
    return fixes;
  }

  private static boolean uses(Stage stage, BasisDefinition basis) {
    return stage.amounts().stream()
        .anyMatch(line -> line.measure().value() instanceof Measure.Share share
            && share
                .basis()
                .filter(of -> of.words().equals(basis.name().value()))
                .isPresent());
  }
}
