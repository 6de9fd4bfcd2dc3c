package dev.kettlemark.library;

import dev.kettlemark.model.Ingredient;
import java.util.List;
import java.util.stream.Stream;

/** The ingredients of the built-in pantry, as the tests look at them. */
final class PantryShelf {

  private static final List<Entry> ENTRIES = Pantry.documents().stream()
      .flatMap(document -> document.entries().stream())
      .filter(entry -> entry.declaration().isPresent())
      .toList();

  private PantryShelf() {}

  static List<Entry> entries() {
    return ENTRIES;
  }

  static List<Ingredient> ingredients() {
    return ENTRIES.stream()
        .flatMap(entry -> entry.declaration().stream())
        .flatMap(d -> d instanceof Ingredient i ? Stream.of(i) : Stream.empty())
        .toList();
  }

  static Ingredient named(String name) {
    return ingredients().stream()
        .filter(ingredient -> ingredient.name().value().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("the pantry has no " + name));
  }

  /** The words of a fact. */
  static List<String> words(Ingredient ingredient, String fact) {
    return ingredient.facts().wordsOf(fact).stream().map(word -> word.value()).toList();
  }

  /** The quoted text of a fact, or nothing. */
  static String text(Ingredient ingredient, String fact) {
    return ingredient
        .facts()
        .first(fact)
        .flatMap(statement -> statement.text())
        .map(text -> text.value())
        .orElse("");
  }
}
