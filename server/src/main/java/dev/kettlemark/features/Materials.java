package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Sign;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.UseRange;
import dev.kettlemark.quantity.Display;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The ingredients and formulas that an amount can be of, most used first. */
final class Materials {

  private final Snapshot snapshot;

  Materials(Snapshot snapshot) {
    this.snapshot = snapshot;
  }

  /**
   * Something that can be weighed.
   *
   * @param ingredient its description; of a formula only its sign is known, so that a large folder need not be
   *     read anew
   */
  private record Material(Sign sign, Optional<Ingredient> ingredient) {

    static Stream<Material> of(Entry entry) {
      return entry.sign().stream()
          .map(sign -> new Material(
              sign,
              sign.isIngredient()
                  ? entry
                      .declaration()
                      .flatMap(d -> d instanceof Ingredient i ? Optional.of(i) : Optional.empty())
                  : Optional.empty()));
    }

    String name() {
      return sign.name();
    }

    boolean isPast() {
      return ingredient.filter(i -> i.facts().says("status", "discontinued")).isPresent();
    }

    Offer offer() {
      return ingredient
          .map(Materials::offer)
          .map(offer -> isPast() ? offer.past() : offer)
          .orElseGet(() -> Offer.of(name(), Kind.FORMULA, sign.title().orElse("")));
    }
  }

  /**
   * Everything that can be weighed.
   *
   * @param last names to offer behind all others, since the stage has them already
   * @param self the formula that is being written, which cannot be part of itself
   */
  List<Offer> weighable(Set<String> last, String self) {
    Map<String, Integer> uses = uses();
    Comparator<Material> order = Comparator.comparing(
            (Material material) -> last.contains(material.name()))
        .thenComparing(Material::isPast)
        .thenComparing(material -> -uses.getOrDefault(material.name(), 0))
        .thenComparing(Material::name);
    return all()
        .filter(material -> !material.name().equals(self))
        .sorted(order)
        .map(Material::offer)
        .toList();
  }

  /** What a piece can be made of: the fitting first, then all else. */
  List<Offer> fitting(Predicate<Declaration> fits) {
    Set<String> fitting = new HashSet<>();
    entries()
        .flatMap(entry -> entry.declaration().stream())
        .filter(fits)
        .forEach(material -> fitting.add(material.name().value()));
    return all()
        .sorted(Comparator.comparing((Material material) -> !fitting.contains(material.name()))
            .thenComparing(Material::name))
        .map(Material::offer)
        .toList();
  }

  /** Formulas and variants only, without the one that is being written. */
  List<Offer> formulas(String self) {
    return all()
        .filter(material -> !material.sign().isIngredient() && !material.name().equals(self))
        .sorted(Comparator.comparing(Material::name))
        .map(Material::offer)
        .toList();
  }

  static boolean isFormula(Declaration material) {
    return !(material instanceof Ingredient);
  }

  private Stream<Material> all() {
    return entries().flatMap(Material::of);
  }

  private Stream<Entry> entries() {
    return snapshot.library().entries(dev.kettlemark.library.Kind.MATERIAL).stream();
  }

  /** How many times the user's own formulas use each material. */
  private Map<String, Integer> uses() {
    Map<String, Integer> uses = new HashMap<>();
    for (Document document : snapshot.library().ownDocuments()) {
      for (Entry entry : document.entries()) {
        entry
            .sign()
            .ifPresent(sign -> sign.used().forEach(name -> uses.merge(name, 1, Integer::sum)));
      }
    }
    return uses;
  }

  private static Offer offer(Ingredient ingredient) {
    String ranges =
        ingredient.uses().stream().map(Materials::range).collect(Collectors.joining(", "));
    String detail = Stream.of(ranges, ingredient.title().orElse(""))
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining(" · "));
    return Offer.of(ingredient.name().value(), Kind.INGREDIENT, detail)
        .withDocumentation(documentation(ingredient));
  }

  private static String range(UseRange use) {
    return Display.range(use.low(), use.high()) + " of " + use.basis().words();
  }

  private static String documentation(Ingredient ingredient) {
    List<String> lines = new ArrayList<>();
    lines.add("**" + ingredient.shownName() + "**");
    if (!ingredient.roles().isEmpty()) {
      lines.add("For: " + String.join(", ", ingredient.roles()) + ".");
    }
    List<Located<String>> allergens = ingredient.facts().wordsOf("allergen");
    if (!allergens.isEmpty()) {
      lines.add("Allergen: "
          + allergens.stream().map(Located::value).collect(Collectors.joining(", "))
          + ".");
    }
    ingredient
        .uses()
        .forEach(use -> lines.add("Usual: "
            + range(use)
            + use.source().map(source -> " (" + source + ")").orElse("")
            + "."));
    return String.join("\n\n", lines);
  }
}
