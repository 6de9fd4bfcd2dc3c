package dev.kettlemark.cards;

import dev.kettlemark.answers.Shelf;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * What the agents of a formula amount to, as a share of its charge.
 *
 * <p>Protein is what foams of an egg white; what a plant protein of the same mass does is another matter, so
 * the pantry's own ratio of stand-ins is told beside it. Equal power is not yet an equal foam or gel.
 */
final class ActivePower {

  /** What others are counted in: fresh egg white, and gelatine of a middling strength. */
  static final String WHITE = "egg-white";

  static final String GELATINE = "gelatine-200";

  private final Side side;

  ActivePower(Side side) {
    this.side = side;
  }

  /** Whether anything in it does that. */
  boolean has(Function function) {
    return side.amounts().keySet().stream().anyMatch(name -> does(name, function));
  }

  private boolean does(String name, Function function) {
    return side.ingredient(name).filter(i -> i.hasRole(function.word())).isPresent();
  }

  /** The protein of all that whips. */
  Outcome<Double> whippingProtein() {
    return sum(
        Function.WHIPPING,
        (name, ingredient) ->
            ingredient.composition().map(composition -> composition.fraction(Component.PROTEIN)));
  }

  /** All agents of a function as if they were one of them. */
  Outcome<Double> as(String reference, Function function) {
    Shelf shelf = new Shelf(side.snapshot());
    return sum(
        function,
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

  private Outcome<Double> sum(Function function, Weight weight) {
    Outcome<Double> sum = Outcome.known(0.0);
    for (Map.Entry<String, Outcome<BigFraction>> amount : side.amounts().entrySet()) {
      Optional<Ingredient> ingredient = side.ingredient(amount.getKey());
      if (ingredient.filter(i -> i.hasRole(function.word())).isPresent()) {
        Outcome<Double> one = Outcome.both(
            amount.getValue(),
            weight.of(amount.getKey(), ingredient.get()),
            (share, by) -> share.doubleValue() * by);
        sum = Outcome.both(sum, one, Double::sum);
      }
    }
    return sum;
  }
}
