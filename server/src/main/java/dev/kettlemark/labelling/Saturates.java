package dev.kettlemark.labelling;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * The saturated fatty acids of what is made, as far as its ingredients state them.
 *
 * <p>What nobody has stated lies between nothing and all the fat of that ingredient.
 *
 * @param stated as a share of the finished weight
 * @param open the fat, as a share of the finished weight, of which nobody has said how much is saturated
 * @param silent whose fat that is, by name
 */
record Saturates(double stated, double open, List<String> silent) {

  Saturates {
    silent = List.copyOf(silent);
  }

  /** Sums up what the ingredients state; no cook takes fat away, so their weights as used are those in the food. */
  static Outcome<Saturates> in(Makeup makeup) {
    Outcome<Saturates> sum = Outcome.known(new Saturates(0, 0, List.of()));
    for (IngredientUse use : makeup.uses()) {
      // The weight of what is only laid around the mass is in no other figure either.
      if (use.isWeighed()) {
        sum = Outcome.both(sum, of(use), Saturates::plus);
      }
    }
    return sum;
  }

  private static Outcome<Saturates> of(IngredientUse use) {
    Optional<Ratio> stated = use.ingredient().flatMap(Ingredient::saturates);
    Outcome<Double> fat = use.composition().map(all -> all.fraction(Component.FAT));
    if (stated.isEmpty() && fat.map(share -> share == 0).orElse(false)) {
      return Outcome.known(new Saturates(0, 0, List.of()));
    }
    return stated
        .map(share ->
            use.share().map(weight -> new Saturates(weight.times(share).fraction(), 0, List.of())))
        .orElseGet(() -> Outcome.both(
            use.share(),
            fat,
            (weight, share) -> new Saturates(0, weight.fraction() * share, List.of(use.name()))));
  }

  private Saturates plus(Saturates other) {
    List<String> names = new ArrayList<>(silent);
    other.silent.stream().filter(name -> !names.contains(name)).forEach(names::add);
    return new Saturates(stated + other.stated, open + other.open, names);
  }

  /**
   * Grams in so much of the food; unknown, with the least that it can be, where what nobody has stated would
   * show on the label.
   */
  Outcome<Double> times(double grams, DoubleFunction<String> rounding) {
    double least = stated * grams;
    String most = rounding.apply((stated + open) * grams);
    return rounding.apply(least).equals(most)
        ? Outcome.known(least)
        : Outcome.unknown(
            Reason.MISSING_FIGURE,
            "`%s` states no `saturates`; without it there are at least %s g in %s g",
            String.join("`, `", silent),
            Display.fixed(least, 1),
            Display.trimmed(grams, 1));
  }
}
