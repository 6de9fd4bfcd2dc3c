package dev.kettlemark.library;

import static dev.kettlemark.library.PantryShelf.text;
import static dev.kettlemark.library.PantryShelf.words;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Vocabulary;
import dev.kettlemark.syntax.SectionWord;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every entry of the built-in pantry is whole, sourced and free of contradictions. */
class PantryTest {

  /** Roles whose dose decides texture, taste or safety; common practice, no source. */
  private static final Set<String> DOSED = Set.of(
      "whipping",
      "gelling",
      "thickening",
      "acidulant",
      "mineral",
      "salt",
      "colour",
      "flavour",
      "leavening",
      "emulsifier");

  /** What a use range may be of. */
  private static final Set<String> USE_BASES =
      Set.of("charge", "finished", "liquid", "water", "sugar");

  /** Facts with figures that are no claims about the material. */
  private static final Set<String> UNSOURCED = Set.of("reviewed", "price", "status");

  /** Tables print two decimals, so a whole is a whole to half a unit of the last. */
  private static final BigFraction ROUNDING = new BigFraction(5, 1000);

  /**
   * Regulation (EU) No 1169/2011, article 21 (1): the list of ingredients refers to the substance of
   * annex II by its name.
   */
  private static final Map<String, List<String>> LABEL_WORDS = Map.ofEntries(
      Map.entry("egg", List.of("egg")),
      Map.entry("milk", List.of("milk", "whey")),
      Map.entry("soy", List.of("soya")),
      Map.entry("wheat", List.of("wheat")),
      Map.entry("gluten", List.of("wheat", "barley", "oat")),
      Map.entry("peanut", List.of("peanut")),
      Map.entry("almond", List.of("almond")),
      Map.entry("hazelnut", List.of("hazelnut")),
      Map.entry("walnut", List.of("walnut")),
      Map.entry("cashew", List.of("cashew")),
      Map.entry("pecan", List.of("pecan")),
      Map.entry("pistachio", List.of("pistachio")),
      Map.entry("macadamia", List.of("macadamia")),
      Map.entry("pine-nut", List.of("pine nut")),
      Map.entry("sesame", List.of("sesame")),
      Map.entry("fish", List.of("fish")),
      Map.entry("sulphite", List.of("sulphite")));

  static List<Ingredient> ingredients() {
    return PantryShelf.ingredients();
  }

  @Test
  void everyFileReadsWithoutAProblem() {
    for (Document document : Pantry.documents()) {
      for (Entry entry : document.entries()) {
        assertEquals(List.of(), entry.section().problems(), document.uri());
        assertEquals(List.of(), entry.reading().problems(), document.uri());
      }
    }
  }

  @Test
  void holdsIngredientsOnlyAndEnoughOfThem() {
    assertTrue(ingredients().size() >= 70, "only " + ingredients().size());
    for (Entry entry : PantryShelf.entries()) {
      assertEquals(Optional.of(SectionWord.INGREDIENT), entry.section().keyword());
    }
  }

  /** The library is told the names by the headings alone, long before it reads what stands below. */
  @Test
  void isKnownByItsHeadings() {
    for (Document document : Pantry.documents()) {
      for (Entry entry : document.entries()) {
        assertEquals(
            entry.declaration().map(declared -> declared.name().value()),
            Pantry.ingredient(entry.section().text()));
        assertEquals(
            Optional.empty(),
            entry.declaration().flatMap(Facts::of).flatMap(facts -> facts.wordOf("code")));
      }
    }
  }

  @Test
  void usesEveryNameOnce() {
    Set<String> names = new HashSet<>();
    for (Ingredient ingredient : ingredients()) {
      assertTrue(names.add(ingredient.name().value()), ingredient.name().value());
    }
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void saysWhatItIsThereForAndHowItComes(Ingredient ingredient) {
    assertFalse(ingredient.roles().isEmpty());
    assertTrue(ingredient.form().isPresent());
    assertTrue(ingredient.title().isPresent());
    assertFalse(text(ingredient, "label").isEmpty());
    assertTrue(ingredient.facts().first("reviewed").isPresent());
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void saysEachSingleFactOnce(Ingredient ingredient) {
    for (String word : FactWord.INGREDIENT) {
      boolean mayRepeat = Set.of(
              "caution", "names", "tolerates", "use", "disperses", "stands-in-for")
          .contains(word);
      assertTrue(mayRepeat || ingredient.facts().all(word).count() <= 1, word);
    }
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void containsAWhole(Ingredient ingredient) {
    BigFraction sum = BigFraction.ZERO;
    Set<String> seen = new HashSet<>();
    for (Statement line : ingredient.facts().all("contains").toList()) {
      for (Located<Operand> operand : line.objects()) {
        if (operand.value() instanceof Operand.Figure figure) {
          assertEquals(Optional.of(Unit.PERCENT), figure.quantity().unit());
          assertTrue(figure.quantity().low().signum() > 0);
          sum = sum.add(figure.quantity().middle());
        } else if (operand.value() instanceof Operand.Name name) {
          assertTrue(Component.ofWord(name.word()).isPresent(), name.word());
          assertTrue(seen.add(name.word()), name.word() + " twice");
        }
      }
    }
    BigFraction gap = sum.subtract(100).abs();
    assertTrue(gap.compareTo(ROUNDING) <= 0, "the parts sum to " + sum.doubleValue());
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void namesASourceForEveryFigure(Ingredient ingredient) {
    for (Statement fact : ingredient.facts().statements()) {
      boolean hasFigure = Stream.concat(
              fact.objects().stream(),
              fact.clauses().stream()
                  .filter(clause -> clause.word() != Connective.FROM)
                  .flatMap(clause -> clause.operands().stream()))
          .anyMatch(operand -> operand.value() instanceof Operand.Figure);
      if (hasFigure && !UNSOURCED.contains(fact.word().value())) {
        assertTrue(
            fact.has(Connective.FROM) && fact.text().isPresent(),
            () -> ingredient.name().value() + ": " + fact.word().value() + " names no source");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void usesWordsOfTheLists(Ingredient ingredient) {
    for (String fact : Vocabulary.facts()) {
      for (String word : words(ingredient, fact)) {
        assertTrue(Vocabulary.knows(fact, word), fact + " " + word);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void saysHowMuchIsUsualWhereTheDoseDecides(Ingredient ingredient) {
    List<Statement> written = ingredient.facts().all("use").toList();
    assertEquals(written.size(), ingredient.uses().size(), "a use range cannot be read");
    if (ingredient.roles().stream().anyMatch(DOSED::contains)) {
      assertFalse(written.isEmpty(), ingredient.name().value());
    }
    ingredient.uses().forEach(use -> {
      assertTrue(use.low().fraction() > 0);
      assertTrue(use.low().compareTo(use.high()) < 0, "low below high");
      assertTrue(use.high().fraction() <= 1);
      assertTrue(USE_BASES.contains(use.basis().words()), use.basis().words());
    });
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void everyRangeRunsUpwards(Ingredient ingredient) {
    for (Statement fact : ingredient.facts().statements()) {
      Stream.concat(
              fact.objects().stream(),
              fact.clauses().stream().flatMap(clause -> clause.operands().stream()))
          .flatMap(operand -> operand.value() instanceof Operand.Figure figure
              ? Stream.of(figure.quantity())
              : Stream.<Quantity>empty())
          .forEach(figure ->
              assertTrue(figure.low().compareTo(figure.high()) <= 0, fact.word().value()));
    }
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void hasADensityThatAFoodCanHave(Ingredient ingredient) {
    // Nothing in a kitchen is lighter than a crisp or heavier than a dry salt crystal; from memory.
    ingredient
        .density()
        .map(density -> density.gramsPerMillilitre())
        .ifPresent(density -> assertTrue(density >= 0.1 && density <= 1.7, "density " + density));
    if (ingredient.isLiquid()) {
      assertTrue(ingredient.density().isPresent(), "what is poured has a density");
    }
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void standsInOnlyForWhatThePantryHas(Ingredient ingredient) {
    words(ingredient, "stands-in-for").forEach(PantryShelf::named);
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void isNotVeganWithAnythingOfAnimals(Ingredient ingredient) {
    boolean vegan = words(ingredient, "suits").contains("vegan");
    List<String> allergens = words(ingredient, "allergen");
    boolean ofAnimals = ingredient.hasTrait("animal")
        || ingredient.hasTrait("raw-animal")
        || ingredient.hasRole("dairy")
        || Stream.of("egg", "milk", "fish", "crustacean", "mollusc").anyMatch(allergens::contains)
        || Stream.of("honey-infant", "raw-egg").anyMatch(words(ingredient, "caution")::contains)
        || Stream.of("honey", "gelatine").anyMatch(text(ingredient, "label")::contains);
    assertFalse(vegan && ofAnimals, ingredient.name().value());
    if (vegan) {
      assertTrue(words(ingredient, "suits").contains("vegetarian"), "vegan is vegetarian too");
    }
    if (ingredient.hasTrait("animal")) {
      assertEquals(List.of(), words(ingredient, "suits"));
    }
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void namesItsAllergensOnItsLabelAndNoOthers(Ingredient ingredient) {
    String label = text(ingredient, "label").replace("coconut milk", "");
    List<String> allergens = words(ingredient, "allergen");
    LABEL_WORDS.forEach((allergen, words) -> assertEquals(
        words.stream().anyMatch(label::contains),
        allergens.contains(allergen),
        ingredient.name().value() + ", " + allergen + ": " + label));
    assertTrue(LABEL_WORDS.keySet().containsAll(allergens), allergens.toString());
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void carriesTheAllergensOfItsKind(Ingredient ingredient) {
    List<String> allergens = words(ingredient, "allergen");
    double lactose = ingredient
        .composition()
        .map(composition -> composition.fraction(Component.LACTOSE))
        .orElse(0.0);
    // Annex II, point 7: milk and products thereof, including lactose.
    assertTrue(lactose == 0 || allergens.contains("milk"), "lactose is milk");
    assertTrue(!ingredient.hasRole("dairy") || allergens.contains("milk"), "dairy is milk");
    assertTrue(!ingredient.hasRole("nut") || !allergens.isEmpty(), "a nut is an allergen");
    assertTrue(
        !ingredient.hasRole("nut") || words(ingredient, "caution").contains("nut"), "nut caution");
    assertTrue(!allergens.contains("wheat") || allergens.contains("gluten"), "wheat has gluten");
    assertEquals(
        allergens.contains("gluten"), words(ingredient, "gluten").contains("yes"), "gluten");
  }

  @ParameterizedTest
  @MethodSource("ingredients")
  void warnsOfSpiritHoneyAndPolyols(Ingredient ingredient) {
    List<String> cautions = words(ingredient, "caution");
    double spirit = share(ingredient, Component.ETHANOL);
    assertEquals(spirit > 0, cautions.contains("alcohol"), "spirit");
    assertTrue(
        !ingredient.name().value().contains("honey") || cautions.contains("honey-infant"), "honey");
    double polyols = ingredient
        .composition()
        .map(composition -> composition.share(Component.Family.POLYOL).fraction())
        .orElse(0.0);
    assertEquals(polyols > 0.1, ingredient.hasTrait("polyol"), "polyol");
    assertEquals(ingredient.hasTrait("polyol"), cautions.contains("laxative"), "laxative");
  }

  /** Regulation (EU) No 1169/2011, article 30 (1) b asks for them wherever there is fat. */
  @ParameterizedTest
  @MethodSource("ingredients")
  void saysHowMuchOfItsFatIsSaturated(Ingredient ingredient) {
    double fat = share(ingredient, Component.FAT);
    assertEquals(fat > 0, ingredient.saturates().isPresent(), "saturates");
    ingredient.saturates().ifPresent(part -> assertTrue(part.fraction() <= fat, "more than fat"));
  }

  private static double share(Ingredient ingredient, Component component) {
    return ingredient
        .composition()
        .map(composition -> composition.fraction(component))
        .orElse(0.0);
  }
}
