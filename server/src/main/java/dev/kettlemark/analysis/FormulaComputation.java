package dev.kettlemark.analysis;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Reason;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Computes one formula: finds what its names mean, and leaves the rest to {@link FormulaSolution}. */
final class FormulaComputation {

  private final Entry entry;
  private final ResolvedFormula resolved;
  private final Formula formula;
  private final Scope scope;
  private final Question<Optional<Entry>> house;
  private final Map<String, Material> materials = new HashMap<>();

  /**
   * Prepares a computation.
   *
   * @param house where it is made
   */
  FormulaComputation(
      Entry entry, ResolvedFormula resolved, Scope scope, Question<Optional<Entry>> house) {
    this.entry = entry;
    this.resolved = resolved;
    this.formula = resolved.formula();
    this.scope = scope;
    this.house = house;
  }

  ComputedFormula compute() {
    Optional<List<String>> circle =
        entry.declaration().flatMap(declaration -> Uses.circle(declaration, scope));
    boolean tooDeep = entry
        .declaration()
        .filter(declaration -> Uses.isTooDeep(declaration, scope))
        .isPresent();
    for (AmountLine line : formula.amounts()) {
      materials.computeIfAbsent(line.ingredient().value(), name -> material(name, circle, tooDeep));
    }
    return FormulaSolution.of(resolved, materials, Kitchen.of(house()));
  }

  private Optional<House> house() {
    return scope
        .ask(house)
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof House house ? Optional.of(house) : Optional.empty());
  }

  private Material material(String name, Optional<List<String>> circle, boolean tooDeep) {
    Optional<Declaration> declaration =
        scope.ask(Lookup.of(Kind.MATERIAL, name)).flatMap(Entry::declaration);
    if (declaration.isEmpty()) {
      return Material.unknown(name, Reason.MISSING_COMPOSITION, "nobody has described `%s`", name);
    }
    if (declaration.get() instanceof Ingredient ingredient) {
      return Material.of(ingredient);
    }
    if (circle.filter(path -> path.contains(name)).isPresent()) {
      return Material.unknown(
          name, Reason.CONTRADICTION, "`%s` is made of this formula itself", name);
    }
    if (tooDeep) {
      return Material.unknown(
          name,
          Reason.DEPENDS_ON_UNKNOWN,
          "formulas go on inside `%s` for more than %s levels",
          name,
          Uses.MOST_LEVELS);
    }
    return scope
        .ask(Formulas.computed(name))
        .map(formula -> Material.of(name, formula))
        .orElseGet(() ->
            Material.unknown(name, Reason.DEPENDS_ON_UNKNOWN, "`%s` cannot be worked out", name));
  }
}
