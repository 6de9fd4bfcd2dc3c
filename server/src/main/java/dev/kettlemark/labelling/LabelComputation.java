package dev.kettlemark.labelling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Scope;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.quantity.Outcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts together what a label says. */
final class LabelComputation {

  private final Entry entry;
  private final Declaration declaration;
  private final Optional<ComputedFormula> formula;
  private final Makeup makeup;
  private final Scope scope;

  LabelComputation(
      Entry entry,
      Declaration declaration,
      Optional<ComputedFormula> formula,
      Makeup makeup,
      Scope scope) {
    this.entry = entry;
    this.declaration = declaration;
    this.formula = formula;
    this.makeup = makeup;
    this.scope = scope;
  }

  Label compute() {
    Facts facts = formula
        .map(computed -> computed.formula().facts())
        .or(() -> Facts.of(declaration))
        .orElseGet(() -> new Facts(List.of()));
    Optional<House> house = scope
        .ask(Lookup.houseFor(entry.uri()))
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof House h ? Optional.of(h) : Optional.empty());
    Allergens allergens = AllergenComputation.of(makeup, facts, house);
    List<Market> markets = Market.of(house);
    return new Label(
        declaration.name().value(),
        declaration.shownName(),
        facts,
        house,
        makeup,
        allergens,
        Arrays.stream(Diet.values()).map(diet -> diet.of(makeup.uses())).toList(),
        claims(facts, allergens, markets),
        new Cautions(entry, formula, makeup, facts, this::carries).needs(markets));
  }

  private List<ClaimAnswer> claims(Facts facts, Allergens allergens, List<Market> markets) {
    Map<String, Optional<String>> made = new LinkedHashMap<>();
    facts.all("claim").forEach(claim -> made.putAll(words(claim)));
    ClaimJudge judge = new ClaimJudge(makeup, allergens, this::composition);
    List<ClaimAnswer> answers = new ArrayList<>();
    made.forEach((word, than) -> markets.stream()
        .flatMap(market -> ClaimRule.of(market, word).stream())
        .map(rule -> judge.judge(rule, than))
        .forEach(answers::add));
    return answers;
  }

  /** {@code claim less-sugar of NAME}: each word with what it compares to. */
  private static Map<String, Optional<String>> words(Statement claim) {
    Optional<String> than = claim.names(Connective.OF).stream().findFirst().map(Located::value);
    Map<String, Optional<String>> words = new LinkedHashMap<>();
    claim.objectNames().forEach(word -> words.put(word.value(), than));
    return words;
  }

  private Optional<Outcome<Composition>> composition(String name) {
    return scope
        .ask(Formulas.computed(name))
        .map(ComputedFormula::composition)
        .or(() -> declared(name)
            .flatMap(
                d -> d instanceof Ingredient i ? Optional.of(i.composition()) : Optional.empty()));
  }

  /** Whether a formula that goes in carries a caution itself. */
  private boolean carries(String name, String caution) {
    return scope
        .ask(Formulas.resolved(name))
        .filter(resolved -> resolved.formula().facts().says("caution", caution))
        .isPresent();
  }

  private Optional<Declaration> declared(String name) {
    return scope.ask(Lookup.of(Kind.MATERIAL, name)).flatMap(Entry::declaration);
  }
}
