package dev.kettlemark.analysis;

import dev.kettlemark.model.AgentTraits;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.List;
import java.util.Optional;

/**
 * What an amount is of: an ingredient of the pantry, or what another formula makes.
 *
 * @param name as the amount names it
 * @param composition what it is made of
 * @param ingredient the pantry entry; empty for a formula and for an unknown name
 * @param agent what it asks for where it gels, thickens or foams
 * @param made what the formula leaves, with its air; empty for an ingredient
 */
public record Material(
    String name,
    Outcome<Composition> composition,
    Optional<Ingredient> ingredient,
    Optional<AgentTraits> agent,
    Optional<StageParcel> made) {

  /** Roles whose bearers must be brought to work. */
  private static final List<String> AGENTS = List.of("gelling", "thickening", "whipping");

  /** What an amount of an ingredient is of. */
  public static Material of(Ingredient ingredient) {
    boolean isAgent = AGENTS.stream().anyMatch(ingredient::hasRole);
    return new Material(
        ingredient.name().value(),
        ingredient.composition(),
        Optional.of(ingredient),
        isAgent ? Optional.of(ingredient.agent()) : Optional.empty(),
        Optional.empty());
  }

  static Material of(String name, ComputedFormula formula) {
    return new Material(
        name,
        formula.composition(),
        Optional.empty(),
        Optional.empty(),
        formula.process().last().map(StageResult::left));
  }

  static Material unknown(String name, Reason reason, String because, Object... values) {
    return new Material(
        name,
        Outcome.unknown(reason, because, values),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
