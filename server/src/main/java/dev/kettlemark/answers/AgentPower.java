package dev.kettlemark.answers;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * What the agents of a formula amount to, as a share of its charge.
 *
 * <p>Protein is what foams of an egg white; what a plant protein of the same mass does is another matter, so
 * the pantry's own ratio of stand-ins is told beside it. Equal power is not yet an equal foam or gel.
 */
public final class AgentPower {

  /** What others are counted in: fresh egg white, and gelatine of a middling strength. */
  public static final String WHITE = "egg-white";

  public static final String GELATINE = "gelatine-200";

  /** What they do, as a role of an ingredient. */
  public static final String WHIPPING = "whipping";

  public static final String GELLING = "gelling";

  private final Shelf shelf;
  private final ComputedFormula formula;
  private final Map<String, Outcome<BigFraction>> amounts = new LinkedHashMap<>();

  public AgentPower(Snapshot snapshot, ComputedFormula formula) {
    this.shelf = new Shelf(snapshot);
    this.formula = formula;
    for (LineAmount line : formula.amounts().lines()) {
      amounts.merge(
          line.line().ingredient().value(),
          line.share(),
          (one, other) -> Outcome.both(one, other, BigFraction::add));
    }
  }

  /** What of it does that, by name, each with its share of the charge. */
  public Map<String, Outcome<BigFraction>> all(String role) {
    Map<String, Outcome<BigFraction>> found = new LinkedHashMap<>();
    amounts.forEach((name, share) -> {
      if (ingredient(name).filter(i -> i.hasRole(role)).isPresent()) {
        found.put(name, share);
      }
    });
    return found;
  }

  /** Whether anything in it does that. */
  public boolean has(String role) {
    return !all(role).isEmpty();
  }

  private Optional<Ingredient> ingredient(String name) {
    return formula.material(name).flatMap(Material::ingredient);
  }

  /** The protein of all that whips. */
  public Outcome<Double> whippingProtein() {
    return sum(
        WHIPPING,
        (name, ingredient) ->
            ingredient.composition().map(composition -> composition.fraction(Component.PROTEIN)));
  }

  /** All agents of a function as if they were one of them. */
  public Outcome<Double> as(String reference, String role) {
    return sum(
        role,
        (name, ingredient) -> name.equals(reference)
            ? Outcome.known(1.0)
            : shelf.standIns(reference).stream()
                .filter(found -> found.material().name().equals(name))
                .map(found -> found.share())
                .filter(share -> share.fraction() > 0)
                .findFirst()
                .map(share -> Outcome.known(1 / share.fraction()))
                .orElseGet(() -> Outcome.unknown(
                    Reason.MISSING_FIGURE,
                    "nobody has said how much `%s` stands for `%s`",
                    name,
                    reference)));
  }

  private interface Weight {
    Outcome<Double> of(String name, Ingredient ingredient);
  }

  private Outcome<Double> sum(String role, Weight weight) {
    Outcome<Double> sum = Outcome.known(0.0);
    for (Map.Entry<String, Outcome<BigFraction>> amount : all(role).entrySet()) {
      Outcome<Double> one = ingredient(amount.getKey())
          .map(ingredient -> Outcome.both(
              amount.getValue(),
              weight.of(amount.getKey(), ingredient),
              (share, by) -> share.doubleValue() * by))
          .orElseGet(() -> Outcome.known(0.0));
      sum = Outcome.both(sum, one, Double::sum);
    }
    return sum;
  }
}
