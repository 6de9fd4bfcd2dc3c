package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports a released formula with an ingredient that is no longer sold.
 *
 * <p>Whoever follows it cannot buy what it asks for.
 */
public final class DiscontinuedIngredient implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "discontinued-ingredient", "a released formula uses an ingredient that is no longer sold");

  private static final Set<String> GONE = Set.of("discontinued", "withdrawn");

  private static final int MOST_STAND_INS = 3;

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
        .withRelated(found.origin(word.span()), "its status")
        .withFixes(fixes(subject, name)));
  }

  private static List<Fix> fixes(Subject subject, Located<String> name) {
    Stream<Fix> standIns = subject.isWrittenHere(name.span())
        ? subject.materialNames().stream()
            .filter(other -> subject
                .ingredient(other)
                .filter(found -> standsFor(found, name.value()) && gone(found).isEmpty())
                .isPresent())
            .sorted()
            .limit(MOST_STAND_INS)
            .map(other -> RenamedHere.fix("Take `" + other + "`", subject, name.value(), other))
        : Stream.empty();
    Stream<Fix> bench = subject.declaration().flatMap(Facts::of).stream()
        .flatMap(facts -> facts.wordOf("status").stream())
        .map(status -> Fix.replace("Set `status bench`", status.span(), "bench"));
    return Stream.concat(standIns, bench).toList();
  }

  /** Gram for gram, since with any other share the amount would have to change too. */
  private static boolean standsFor(Ingredient ingredient, String name) {
    return ingredient
        .facts()
        .all("stands-in-for")
        .filter(fact -> fact.objectNames().stream().anyMatch(n -> n.value().equals(name)))
        .flatMap(fact -> fact.figure(Connective.AT, Unit.Dimension.SHARE).stream())
        .anyMatch(share -> share.value().middleInBase().doubleValue() == 1);
  }
}
