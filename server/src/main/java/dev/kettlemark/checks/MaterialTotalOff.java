package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Excerpt;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a formula that is used as a material although its own lines do not add up.
 *
 * <p>The formula itself is told by {@link TotalOff}; here whoever uses it learns that the mistake is
 * theirs too.
 */
public final class MaterialTotalOff implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "material-total-off", "a formula is used whose own lines do not add up to 100 %");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(computed -> check(subject, computed)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula computed) {
    Set<String> told = new HashSet<>();
    return computed.formula().amounts().stream()
        .filter(line -> !computed.formula().inherits(line.span()))
        .filter(line -> computed
            .material(line.ingredient().value())
            .filter(material -> material.made().isPresent())
            .isPresent())
        .filter(line -> told.add(line.ingredient().value()))
        .flatMap(line -> finding(subject, line).stream())
        .toList();
  }

  private static Optional<Finding> finding(Subject subject, AmountLine line) {
    String name = line.ingredient().value();
    return subject
        .ask(Formulas.computed(name))
        .filter(made -> TotalOff.isOff(subject, made))
        .map(made -> {
          Finding finding = INFO.at(
                  line.ingredient().span(),
                  "the lines of %s add up to %s",
                  Excerpt.of(name),
                  Display.percent(made.amounts().total()))
              .because("what it brings into this formula is off by the same share");
          return subject
              .ask(Lookup.of(Kind.MATERIAL, name))
              .map(entry -> finding.withRelated(
                  entry.origin(made.formula().name().span()), "the formula that is off"))
              .orElse(finding);
        });
  }
}
