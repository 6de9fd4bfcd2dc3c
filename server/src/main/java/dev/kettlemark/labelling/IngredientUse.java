package dev.kettlemark.labelling;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * An ingredient in what is made, all its lines together.
 *
 * @param name by which the formulas call it
 * @param ingredient its description; empty where nobody has described it
 * @param share its weight as used, as a share of the finished weight; may pass one where much boils away
 * @param isWeighed whether a line weighs it in; otherwise a step lays it around the mass, and the finished
 *     weight leaves it out
 * @param ways how it gets in, the first few
 */
public record IngredientUse(
    String name,
    Optional<Ingredient> ingredient,
    Outcome<Ratio> share,
    boolean isWeighed,
    List<Way> ways) {

  /** Words by which an ingredient speaks of its label; one that says none of them is silent. */
  private static final Set<String> LABEL_FACTS = Set.of("allergen", "gluten", "suits", "label");

  /** Tap water holds minerals. */
  private static final double PURE = 0.998;

  public IngredientUse {
    ways = List.copyOf(ways);
  }

  /** Whether anybody has said what a label needs to know. */
  public boolean isDescribed() {
    return ingredient.stream()
        .flatMap(i -> i.facts().statements().stream())
        .anyMatch(fact -> LABEL_FACTS.contains(fact.word().value()));
  }

  /** Whether the ingredient states that word in a fact. */
  public boolean says(String fact, String word) {
    return ingredient.filter(i -> i.facts().says(fact, word)).isPresent();
  }

  /** The words that the ingredient states in a fact. */
  public List<String> words(String fact) {
    return ingredient
        .map(i -> i.facts().wordsOf(fact).stream().map(Located::value).toList())
        .orElse(List.of());
  }

  /** Its name in a list of ingredients, or else its display name. */
  public String label() {
    return ingredient
        .map(i -> i.facts()
            .first("label")
            .flatMap(fact -> fact.text())
            .map(Located::value)
            .orElseGet(() -> i.shownName().toLowerCase(Locale.ROOT)))
        .orElse(name);
  }

  /** Whether its label is written, and not only guessed from its name. */
  public boolean hasLabel() {
    return ingredient.flatMap(i -> i.facts().first("label")).isPresent();
  }

  /** Every name by which it may be known, as {@link Phrase#plain} text. */
  public List<String> plainNames() {
    List<String> names = new ArrayList<>();
    names.add(Phrase.plain(name));
    ingredient.ifPresent(described -> {
      described.title().ifPresent(title -> names.add(Phrase.plain(title)));
      for (Statement fact : described.facts().statements()) {
        if (fact.is("names")) {
          fact.text().ifPresent(text -> names.add(Phrase.plain(text.value())));
        }
      }
      names.add(Phrase.plain(label()));
    });
    return names;
  }

  public Outcome<Composition> composition() {
    return ingredient
        .map(Ingredient::composition)
        .orElseGet(
            () -> Outcome.unknown(Reason.MISSING_COMPOSITION, "nobody has described `%s`", name));
  }

  /** Whether it is water and nothing else that counts. */
  public boolean isWater() {
    return composition()
        .map(composition -> composition.fraction(Component.WATER) >= PURE)
        .orElse(false);
  }

  /** Whether one of the section's own lines names it. */
  public boolean isDirect() {
    return ways.stream().anyMatch(Way::isDirect);
  }
}
