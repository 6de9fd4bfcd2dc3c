package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reports two thickeners that only thicken alone, and gel where they meet.
 *
 * <p>Which ones do so stands in the pantry, behind {@code gels-with}.
 */
public final class GumsThatGelTogether implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("gums-that-gel-together", "two thickeners that gel where they meet");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(formula -> !formula.formula().facts().says("texture", "gelled"))
        .map(formula -> check(subject, formula))
        .orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula formula) {
    List<Located<String>> names =
        formula.formula().amounts().stream().map(AmountLine::ingredient).toList();
    List<Finding> findings = new ArrayList<>();
    List<String> told = new ArrayList<>();
    for (Located<String> one : names) {
      // An agent that gels alone makes no secret of it.
      List<Located<String>> partners = subject
          .ingredient(one.value())
          .filter(thickener -> !thickener.hasRole("gelling"))
          .map(gum -> gum.facts().wordsOf("gels-with"))
          .orElse(List.of());
      if (partners.isEmpty()) {
        continue;
      }
      for (Located<String> other : names) {
        boolean isNew = !told.contains(other.value() + " " + one.value());
        if (isNew && gelsWith(subject, partners, other.value())) {
          told.add(one.value() + " " + other.value());
          findings.add(
              INFO.at(other.span(), "`%s` and `%s` gel together", one.value(), other.value())
                  .because("each alone only thickens; write `texture gelled` if the gel is wanted,"
                      + " or take one of them")
                  .withRelated(subject.entry().origin(one.span()), "the other one")
                  .withFix(gelled(subject, formula)));
        }
      }
    }
    return findings;
  }

  private static Fix gelled(Subject subject, ComputedFormula formula) {
    Optional<Located<String>> texture = formula
        .formula()
        .facts()
        .wordOf("texture")
        .filter(word -> subject.isWrittenHere(word.span()));
    return texture
        .map(word -> Fix.replace("Write `texture gelled`", word.span(), "gelled"))
        .orElseGet(() -> new Fix(
            "Add `texture gelled`",
            List.of(
                new Columns(subject.section()).addFact(Optional.empty(), "texture", "gelled"))));
  }

  private static boolean gelsWith(Subject subject, List<Located<String>> partners, String other) {
    return partners.stream().anyMatch(partner -> partner.value().equals(other))
        && !gelsAlone(subject, other);
  }

  private static boolean gelsAlone(Subject subject, String name) {
    return subject
        .ingredient(name)
        .filter(gum -> gum.hasRole("gelling") && gum.agent().sets().isPresent())
        .isPresent();
  }
}
