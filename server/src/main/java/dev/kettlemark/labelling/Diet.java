package dev.kettlemark.labelling;

import java.util.List;
import java.util.Set;

/**
 * A diet, and what an ingredient says of it.
 *
 * <p>Vegan says nothing of allergens: soya is vegan, and traces of milk may be in what is vegan.
 */
public enum Diet {
  VEGAN("vegan"),
  VEGETARIAN("vegetarian");

  private static final Set<String> OF_ANIMALS =
      Set.of("egg", "milk", "fish", "crustacean", "mollusc");

  private static final Set<String> OF_THEIR_BODIES = Set.of("fish", "crustacean", "mollusc");

  private final String word;

  Diet(String word) {
    this.word = word;
  }

  /** The word of the language. */
  public String word() {
    return word;
  }

  /**
   * What an ingredient's description says.
   *
   * <p>{@code suits} lists every diet that it suits, so one that it leaves out it does not suit. Without
   * {@code suits} only what is plainly of animals decides.
   */
  Standing of(IngredientUse use) {
    if (use.says("suits", word)) {
      return Standing.HOLDS;
    }
    Set<String> offending = this == VEGAN ? OF_ANIMALS : OF_THEIR_BODIES;
    boolean isOfAnimals = use.says("traits", "animal")
        || use.words("allergen").stream().anyMatch(offending::contains);
    boolean aided = this == VEGAN && use.says("traits", "refined-with-animal-aid");
    if (isOfAnimals || aided || !use.words("suits").isEmpty()) {
      return Standing.BROKEN;
    }
    return Standing.UNKNOWN;
  }

  /** What all ingredients together say. */
  Answer of(List<IngredientUse> uses) {
    return new Answer(
        this,
        uses.stream().filter(use -> of(use) == Standing.BROKEN).toList(),
        uses.stream().filter(use -> of(use) == Standing.UNKNOWN).toList());
  }

  /**
   * Whether a diet is kept.
   *
   * @param offenders what breaks it
   * @param silent what says nothing of it
   */
  public record Answer(Diet diet, List<IngredientUse> offenders, List<IngredientUse> silent) {

    public Answer {
      offenders = List.copyOf(offenders);
      silent = List.copyOf(silent);
    }

    public Standing standing() {
      if (!offenders.isEmpty()) {
        return Standing.BROKEN;
      }
      return silent.isEmpty() ? Standing.HOLDS : Standing.UNKNOWN;
    }
  }
}
