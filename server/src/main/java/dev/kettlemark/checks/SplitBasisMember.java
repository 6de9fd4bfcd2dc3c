package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(SplitBasisMember::check).orElse(List.of());
  }

  private static List<Finding> check(ComputedFormula computed) {
    Formula formula = computed.formula();
    List<Finding> findings = new ArrayList<>();
    for (BasisDefinition basis : formula.bases()) {
      for (BasisDefinition.Member member : basis.members()) {
        List<Integer> stages = stagesOf(formula, member.ingredient().value());
        if (stages.size() > 1 && !saysWhere(formula, member)) {
          findings.add(finding(computed, basis, member.ingredient(), stages));
        }
      }
    }
    return findings;
  }

  /** A member is placed by its stage, or is a stage itself. */
  private static boolean saysWhere(Formula formula, BasisDefinition.Member member) {
    return member.stage().isPresent()
        || formula.stage(member.ingredient().value()).isPresent();
  }

  private static List<Integer> stagesOf(Formula formula, String ingredient) {
    return IntStream.range(0, formula.stages().size())
        .filter(index -> formula.stages().get(index).amounts().stream()
            .anyMatch(line -> line.ingredient().value().equals(ingredient)))
        .boxed()
        .toList();
  }

  private static Finding finding(
      ComputedFormula computed,
      BasisDefinition basis,
      Located<String> member,
      List<Integer> stages) {
    Formula formula = computed.formula();
    List<String> names =
        stages.stream().map(index -> formula.stages().get(index).name().value()).toList();
    Finding finding = INFO.at(
            member.span(),
            "`%s` of the basis `%s` stands in %s",
            member.value(),
            basis.name().value(),
            names.stream().map(name -> "`" + name + "`").collect(Collectors.joining(" and in ")))
        .because("all of it counts: " + shares(computed, member.value(), stages)
            + " of charge; a dose of the basis rises with it");
    return formula.inherits(basis.span())
        ? finding
        : finding.withFixes(fixes(formula, basis, member, stages));
  }

  private static String shares(ComputedFormula computed, String ingredient, List<Integer> stages) {
    return stages.stream()
        .map(index -> Display.percent(share(computed, ingredient, index)) + " in `"
            + computed.formula().stages().get(index).name().value() + "`")
        .collect(Collectors.joining(", "));
  }

  private static BigFraction share(ComputedFormula computed, String ingredient, int stage) {
    return computed.amounts().lines().stream()
        .filter(line -> line.stage() == stage)
        .filter(line -> line.line().ingredient().value().equals(ingredient))
        .map(line -> line.share().orElse(BigFraction.ZERO))
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  /** The stage that uses the basis comes first; to count every stage stays possible. */
  private static List<Fix> fixes(
      Formula formula, BasisDefinition basis, Located<String> member, List<Integer> stages) {
    List<String> places = stages.stream()
        .map(index -> formula.stages().get(index))
        .sorted((one, other) -> Boolean.compare(uses(other, basis), uses(one, basis)))
        .map(stage -> member.value() + " in " + stage.name().value())
        .toList();
    Span span = member.span();
    List<Fix> fixes = new ArrayList<>();
    places.forEach(place -> fixes.add(Fix.replace("Write `" + place + "`", span, place)));
    String all = String.join(", ", places);
    fixes.add(Math.min(fixes.size(), 2), Fix.replace("Write `" + all + "`", span, all));
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
