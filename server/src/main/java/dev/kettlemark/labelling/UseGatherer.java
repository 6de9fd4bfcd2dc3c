package dev.kettlemark.labelling;

import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts the lines of one ingredient together, so that formulas of formulas stay as short as their pantry. */
final class UseGatherer {

  /** More ways to one ingredient tell the reader nothing new. */
  private static final int MOST_WAYS = 4;

  private final Map<String, IngredientUse> uses = new LinkedHashMap<>();

  void add(IngredientUse use) {
    uses.merge(use.name(), use, UseGatherer::together);
  }

  /** Adds what another formula or part is made of. */
  void add(Makeup inside, Outcome<Ratio> share, Way.Step step) {
    for (IngredientUse use : inside.uses()) {
      add(new IngredientUse(
          use.name(),
          use.ingredient(),
          Outcome.both(share, use.share(), Ratio::times),
          use.isWeighed(),
          use.ways().stream().map(way -> way.under(step)).toList()));
    }
  }

  /** Heaviest first; what has no known weight last. */
  List<IngredientUse> byWeight() {
    return uses.values().stream()
        .sorted(
            Comparator.comparingDouble(use -> -use.share().map(Ratio::fraction).orElse(-1.0)))
        .toList();
  }

  private static IngredientUse together(IngredientUse one, IngredientUse other) {
    List<Way> ways = new ArrayList<>(one.ways());
    other.ways().stream().filter(way -> !ways.contains(way)).forEach(ways::add);
    return new IngredientUse(
        one.name(),
        one.ingredient(),
        Outcome.both(one.share(), other.share(), Ratio::plus),
        one.isWeighed() || other.isWeighed(),
        ways.subList(0, Math.min(MOST_WAYS, ways.size())));
  }
}
