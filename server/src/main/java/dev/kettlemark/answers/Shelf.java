package dev.kettlemark.answers;

import dev.kettlemark.analysis.Material;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.Bloom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The ingredients of a library and its pantry, by what can take the place of what. */
public final class Shelf {

  private final Snapshot snapshot;

  public Shelf(Snapshot snapshot) {
    this.snapshot = snapshot;
  }

  /**
   * Something that may take another's place.
   *
   * @param material what does
   * @param share how much of it stands for one part of the other
   * @param by the names over which it does, where the pantry says so in two steps
   * @param source who says so
   */
  public record StandIn(Material material, Ratio share, List<String> by, String source) {

    public StandIn {
      by = List.copyOf(by);
    }
  }

  /** An ingredient by its name. */
  public Optional<Material> material(String name) {
    return snapshot
        .library()
        .find(Kind.MATERIAL, name)
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof Ingredient i ? Optional.of(Material.of(i)) : Optional.empty());
  }

  /** The gel strength that an ingredient states. */
  public static Optional<Bloom> bloom(Ingredient ingredient) {
    return ingredient
        .facts()
        .first("bloom")
        .flatMap(fact -> fact.objects().stream()
            .flatMap(operand -> operand.value() instanceof Operand.Figure f
                ? Stream.of(f.quantity().middle().doubleValue())
                : Stream.empty())
            .findFirst())
        .filter(Bloom::isGrade)
        .map(Bloom::new);
  }

  /** The gelatines, weakest first. */
  public List<Material> gelatines() {
    return ingredients()
        .filter(ingredient -> bloom(ingredient).isPresent())
        .sorted(
            Comparator.comparing((Ingredient i) -> bloom(i).map(Bloom::grams).orElse(Bloom.WEAKEST))
                .thenComparing(i -> i.name().value()))
        .map(Material::of)
        .toList();
  }

  /** The egg whites of the library, dried ones or fresh ones, by name. */
  public List<Material> eggWhites(boolean dried) {
    return ingredients()
        .filter(Shelf::isEggWhite)
        .filter(ingredient -> isDried(ingredient) == dried)
        .sorted(Comparator.comparing(ingredient -> ingredient.name().value()))
        .map(Material::of)
        .toList();
  }

  /** Whether something is egg white, fresh or dried: it whips, and it is egg. */
  public static boolean isEggWhite(Ingredient ingredient) {
    return ingredient.hasRole("whipping") && ingredient.facts().says("allergen", "egg");
  }

  public static boolean isDried(Ingredient ingredient) {
    return ingredient.form().filter(form -> form.equals("powder")).isPresent();
  }

  /** What the library says may stand in for an ingredient, in one step or in two. */
  public List<StandIn> standIns(String name) {
    List<StandIn> found = new ArrayList<>();
    ingredients().forEach(ingredient -> found.addAll(standIns(ingredient, name)));
    found.sort(Comparator.comparing(standIn -> standIn.material().name()));
    return found;
  }

  /** Whether one material may stand in for another, in one step or in two. */
  public boolean standsIn(String other, String name) {
    return material(other)
        .flatMap(Material::ingredient)
        .filter(ingredient -> !standIns(ingredient, name).isEmpty())
        .isPresent();
  }

  private List<StandIn> standIns(Ingredient ingredient, String name) {
    List<StandIn> found = new ArrayList<>();
    standsFor(ingredient, name)
        .ifPresent(share -> found.add(
            new StandIn(Material.of(ingredient), share.value(), List.of(), source(ingredient))));
    directly(ingredient, name, found);
    return found;
  }

  private void directly(Ingredient ingredient, String name, List<StandIn> found) {
    for (Statement fact : ingredient.facts().all("stands-in-for").toList()) {
      Optional<Located<String>> middle = fact.objectNames().stream().findFirst();
      Optional<Ingredient> between = middle
          .filter(m ->
              !m.value().equals(name) && !m.value().equals(ingredient.name().value()))
          .flatMap(m -> material(m.value()))
          .flatMap(Material::ingredient);
      if (between.isPresent() && !ingredient.name().value().equals(name)) {
        Optional<Located<Ratio>> first =
            standsFor(ingredient, between.get().name().value());
        Optional<Located<Ratio>> second = standsFor(between.get(), name);
        if (first.isPresent() && second.isPresent()) {
          found.add(new StandIn(
              Material.of(ingredient),
              first.get().value().times(second.get().value()),
              List.of(between.get().name().value()),
              source(ingredient)));
        }
      }
    }
  }

  /** How much of an ingredient stands for one part of another; empty where it does not. */
  private static Optional<Located<Ratio>> standsFor(Ingredient ingredient, String name) {
    return ingredient
        .facts()
        .all("stands-in-for")
        .filter(fact -> fact.objectNames().stream().anyMatch(n -> n.value().equals(name)))
        .flatMap(fact -> fact
            .figure(Connective.AT, Unit.Dimension.SHARE)
            .map(figure -> figure.map(Shelf::ratio))
            .stream())
        .findFirst();
  }

  private static Ratio ratio(Quantity quantity) {
    return Ratio.ofFraction(quantity.middleInBase().doubleValue());
  }

  private static String source(Ingredient ingredient) {
    return ingredient
        .facts()
        .first("stands-in-for")
        .flatMap(Statement::text)
        .map(Located::value)
        .orElse("no source given");
  }

  private Stream<Ingredient> ingredients() {
    return snapshot.library().entries(Kind.MATERIAL).stream()
        .flatMap(entry -> entry.declaration().stream())
        .flatMap(d -> d instanceof Ingredient i ? Stream.of(i) : Stream.empty());
  }
}
