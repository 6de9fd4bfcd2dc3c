package dev.kettlemark.model;

import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;

/**
 * A material of the pantry.
 *
 * @param roles what it is there for, such as {@code whipping}
 * @param form how it comes: liquid, syrup, powder, crystals, paste, solid, pieces, sheet
 * @param composition what it is made of
 * @param density as poured for powders, true for the rest
 * @param uses the usual dose, each on its own basis
 * @param facts all facts, the typed ones among them
 */
public record Ingredient(
    Located<String> name,
    Optional<String> title,
    List<String> roles,
    Optional<String> form,
    Outcome<Composition> composition,
    Optional<Density> density,
    List<UseRange> uses,
    Facts facts)
    implements Declaration {

  /** The word of the fact. */
  public static final String SATURATES = "saturates";

  public Ingredient {
    roles = List.copyOf(roles);
    uses = List.copyOf(uses);
  }

  public boolean hasRole(String role) {
    return roles.contains(role);
  }

  /** What it asks for before it gels, thickens or foams. */
  public AgentTraits agent() {
    return AgentTraits.of(facts);
  }

  /** The saturated fatty acids among its fat, as a share of its mass; empty where nobody has said. */
  public Optional<Ratio> saturates() {
    return facts
        .first(SATURATES)
        .flatMap(fact -> fact.objectFigure(Unit.Dimension.SHARE))
        .map(figure -> Ratio.ofFraction(figure.value().middleInBase().doubleValue()));
  }

  public boolean hasTrait(String trait) {
    return facts.says("traits", trait);
  }

  /** Whether it is poured rather than spooned. */
  public boolean isLiquid() {
    return form.filter(f -> f.equals("liquid") || f.equals("syrup")).isPresent();
  }
}
