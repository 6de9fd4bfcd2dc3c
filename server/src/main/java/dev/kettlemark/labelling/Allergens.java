package dev.kettlemark.labelling;

import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The allergens of what is made, in the pantry's own words; a market makes its own list of them.
 *
 * @param contained by word, with the ingredients that bring it
 * @param mayContain by word, with the ingredients that warn of it; the product's own warnings have none
 * @param onSite what the house handles besides, from which traces may come
 * @param silent ingredients that say nothing of allergens
 * @param sulphite sulphur dioxide from all ingredients that state it, as a share of the finished food
 */
public record Allergens(
    Map<String, List<IngredientUse>> contained,
    Map<String, List<IngredientUse>> mayContain,
    List<String> onSite,
    List<IngredientUse> silent,
    Outcome<Ratio> sulphite) {

  /** The pantry's word for sulphur dioxide and sulphites. */
  static final String SULPHITE = "sulphite";

  public Allergens {
    // The order of the words is that of the vocabulary, which a plain copy would lose.
    contained = Collections.unmodifiableMap(new LinkedHashMap<>(contained));
    mayContain = Collections.unmodifiableMap(new LinkedHashMap<>(mayContain));
    onSite = List.copyOf(onSite);
    silent = List.copyOf(silent);
  }

  /** Whether some ingredient holds it. */
  public boolean holds(String word) {
    return contained.containsKey(word);
  }

  /** The ingredients that hold it; none where it is not contained. */
  public List<IngredientUse> sources(String word) {
    return contained.getOrDefault(word, List.of());
  }
}
