package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Mentions;
import dev.kettlemark.model.UseRange;
import dev.kettlemark.quantity.Display;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
   * Everything that can be weighed.
   *
   * @param last names to offer behind all others, since the stage has them already
   * @param self the formula that is being written, which cannot be part of itself
   */
  List<Offer> weighable(Set<String> last, String self) {
    Map<String, Integer> uses = uses();
    Comparator<Declaration> order = Comparator.comparing(
            (Declaration material) -> last.contains(name(material)))
        .thenComparing(Materials::isPast)
        .thenComparing(material -> -uses.getOrDefault(name(material), 0))
        .thenComparing(Materials::name);
    return all()
        .filter(material -> !name(material).equals(self))
        .sorted(order)
        .map(Materials::offer)
        .toList();
  }

  /** What a piece can be made of: the fitting first, then all else. */
  List<Offer> fitting(Predicate<Declaration> fits) {
    List<Offer> offers = new ArrayList<>();
    List<Declaration> sorted =
        all().sorted(Comparator.comparing(Materials::name)).toList();
    sorted.stream().filter(fits).map(Materials::offer).forEach(offers::add);
    sorted.stream().filter(fits.negate()).map(Materials::offer).forEach(offers::add);
    return offers;
  }

  /** Formulas and variants only, without the one that is being written. */
  List<Offer> formulas(String self) {
    return all()
        .filter(material -> isFormula(material) && !name(material).equals(self))
        .sorted(Comparator.comparing(Materials::name))
        .map(Materials::offer)
        .toList();
  }

  static boolean isFormula(Declaration material) {
    return !(material instanceof Ingredient);
  }

  private Stream<Declaration> all() {
    return snapshot.library().entries(dev.kettlemark.library.Kind.MATERIAL).stream()
        .flatMap(entry -> entry.declaration().stream());
  }

  /** How many times the user's own formulas use each material. */
  private Map<String, Integer> uses() {
    Map<String, Integer> uses = new HashMap<>();
    snapshot.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .map(Entry::declaration)
        .flatMap(declaration -> declaration.map(Mentions::used).stream())
        .flatMap(List::stream)
        .map(Located::value)
        .forEach(name -> uses.merge(name, 1, Integer::sum));
    return uses;
  }

  private static String name(Declaration material) {
    return material.name().value();
  }

  private static boolean isPast(Declaration material) {
    return material instanceof Ingredient ingredient
        && ingredient.facts().says("status", "discontinued");
  }

  private static Offer offer(Declaration material) {
    String title = material.title().orElse("");
    if (!(material instanceof Ingredient ingredient)) {
      return Offer.of(name(material), Kind.FORMULA, title);
    }
    String ranges =
        ingredient.uses().stream().map(Materials::range).collect(Collectors.joining(", "));
    String detail =
        Stream.of(ranges, title).filter(s -> !s.isEmpty()).collect(Collectors.joining(" · "));
    Offer offer = Offer.of(name(material), Kind.INGREDIENT, detail)
        .withDocumentation(documentation(ingredient));
    return isPast(material) ? offer.past() : offer;
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
