package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a released formula with an ingredient that is no longer sold.
 *
 * <p>Whoever follows it cannot buy what it asks for.
 */
public final class DiscontinuedIngredient implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "discontinued-ingredient", "a released formula uses an ingredient that is no longer sold");

  private static final Set<String> GONE = Set.of("discontinued", "withdrawn");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(computed -> computed.formula().facts().says("status", "released"))
        .map(ComputedFormula::formula)
        .stream()
        .flatMap(formula -> formula.amounts().stream())
        .map(AmountLine::ingredient)
        .flatMap(name -> subject
            .ingredient(name.value())
            .flatMap(DiscontinuedIngredient::gone)
            .flatMap(word -> finding(subject, name, word))
            .stream())
        .toList();
  }

  private static Optional<Located<String>> gone(Ingredient ingredient) {
    return ingredient.facts().wordOf("status").filter(word -> GONE.contains(word.value()));
  }

  private static Optional<Finding> finding(
      Subject subject, Located<String> name, Located<String> word) {
    Optional<Entry> entry = subject.ask(Lookup.of(Kind.MATERIAL, name.value()));
    return entry.map(found -> INFO.at(
            name.span(), "`%s` is %s, and the formula is released", name.value(), word.value())
        .because("whoever follows the formula cannot buy it")
        .withRelated(found.origin(word.span()), "its status"));
  }
}
