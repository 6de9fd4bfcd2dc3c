package dev.kettlemark.labelling;

import dev.kettlemark.labelling.ClaimAnswer.Ground;
import dev.kettlemark.labelling.ClaimAnswer.Kind;
import dev.kettlemark.library.Origin;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.science.FoodEnergy;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Asks of what is made what a claim asks for. */
final class ClaimJudge {

  private static final List<String> GLUTEN = List.of("gluten", "wheat");

  /** Less sugar than this in a sweet material is no sweetening; common practice, no source. */
  private static final double SWEETENING = 0.05;

  private static final double KILOCALORIES_OF_PROTEIN = 4;

  private final Makeup makeup;
  private final Allergens allergens;
  private final Function<String, Optional<Outcome<Composition>>> reference;

  /** @param reference the finished composition of what another name means; empty for an unknown name */
  ClaimJudge(
      Makeup makeup,
      Allergens allergens,
      Function<String, Optional<Outcome<Composition>>> reference) {
    this.makeup = makeup;
    this.allergens = allergens;
    this.reference = reference;
  }

  /** @param than what the claim names for comparison */
  ClaimAnswer judge(ClaimRule rule, Optional<String> than) {
    if (makeup.uses().isEmpty()) {
      return new ClaimAnswer(
          rule.claim(), rule.market(), rule.law(), unstated(Remark.of("nothing is weighed in")));
    }
    List<Ground> grounds = switch (rule.test()) {
      case "diet" -> diet(rule.values().get(0));
      case "free-from" -> freeFrom(rule.values());
      case "gluten" -> gluten();
      case "added-sugar" -> addedSugar();
      case "less-sugar" -> lessSugar(Double.parseDouble(rule.values().get(0)), than);
      case "at-most" -> amount(rule.values().get(0), true);
      case "at-least" -> amount(rule.values().get(0), false);
      case "energy-share" -> energyShare(Double.parseDouble(rule.values().get(0)));
      case "no-ethanol" -> ethanol();
      case "certified" -> certified();
      case "serving" ->
        unstated(Remark.of("it is judged by the serving, which is not computed here"));
      case "undefined" -> broken("the claim is not defined and may not be used");
      default -> throw new IllegalStateException("no test is named " + rule.test());
    };
    return new ClaimAnswer(rule.claim(), rule.market(), rule.law(), grounds);
  }

  private List<Ground> diet(String word) {
    Diet diet = Diet.valueOf(word.toUpperCase(Locale.ROOT));
    Diet.Answer answer = diet.of(makeup.uses());
    Remark.Word claim = new Remark.Word("claim", word);
    return Stream.concat(
            answer.offenders().stream()
                .map(use -> ground(Kind.CONTAINED, use, "`%s` is not %s", use.name(), claim)),
            answer.silent().stream()
                .map(use -> ground(
                    Kind.UNSTATED, use, "nobody has stated whether `%s` is %s", use.name(), claim)))
        .toList();
  }

  private List<Ground> freeFrom(List<String> words) {
    List<Ground> grounds = new ArrayList<>();
    for (String word : words) {
      contained(word, grounds);
      traces(word, Kind.TRACES, grounds);
      onSite(word, grounds);
    }
    allergens.silent().stream()
        .map(use ->
            ground(Kind.UNSTATED, use, "nobody has stated the allergens of `%s`", use.name()))
        .forEach(grounds::add);
    return grounds;
  }

  /** The limit is one of analysis: traces make it unknown, and do not break it. */
  private List<Ground> gluten() {
    List<Ground> grounds = new ArrayList<>();
    for (IngredientUse use : makeup.uses()) {
      boolean holds =
          use.says("gluten", "yes") || use.words("allergen").stream().anyMatch(GLUTEN::contains);
      if (holds) {
        grounds.add(ground(Kind.CONTAINED, use, "`%s` holds gluten", use.name()));
      } else if (!use.says("gluten", "no")) {
        grounds.add(ground(Kind.UNSTATED, use, "the gluten of `%s` is not known", use.name()));
      }
    }
    for (String word : GLUTEN) {
      traces(word, Kind.UNSTATED, grounds);
      onSite(word, grounds);
    }
    return grounds;
  }

  private void contained(String word, List<Ground> grounds) {
    allergens.sources(word).stream()
        .map(use -> ground(
            Kind.CONTAINED, use, "`%s` holds %s", use.name(), new Remark.Word("allergen", word)))
        .forEach(grounds::add);
  }

  private void traces(String word, Kind kind, List<Ground> grounds) {
    List<IngredientUse> sources = allergens.mayContain().get(word);
    if (sources == null) {
      return;
    }
    Remark.Word what = new Remark.Word("allergen", word);
    sources.stream()
        .map(use -> ground(kind, use, "`%s` may contain %s", use.name(), what))
        .forEach(grounds::add);
    if (sources.isEmpty()) {
      grounds.add(ground(kind, "the product itself may contain %s", what));
    }
  }

  private void onSite(String word, List<Ground> grounds) {
    if (allergens.onSite().contains(word)) {
      grounds.add(ground(Kind.ON_SITE, "the house handles %s", new Remark.Word("allergen", word)));
    }
  }

  private List<Ground> addedSugar() {
    return makeup.uses().stream()
        .filter(ClaimJudge::isAddedSugar)
        .map(use -> ground(Kind.CONTAINED, use, "`%s` is added for its sugars", use.name()))
        .toList();
  }

  /** Sugars, and any other food that is used for its sweetening properties. */
  private static boolean isAddedSugar(IngredientUse use) {
    boolean sweetens = use.ingredient().filter(i -> i.hasRole("sweetening")).isPresent();
    boolean holdsSugars = use.composition()
        .map(composition -> composition.sugars().fraction() > SWEETENING)
        .orElse(false);
    return use.says("traits", "added-sugar") || (sweetens && holdsSugars);
  }

  private List<Ground> lessSugar(double percent, Optional<String> than) {
    if (than.isEmpty()) {
      return List.of(ground(Kind.NO_REFERENCE, "it does not say less than what"));
    }
    Optional<Outcome<Composition>> other = reference.apply(than.get());
    if (other.isEmpty()) {
      return List.of(ground(Kind.NO_REFERENCE, "nobody has described `%s`", than.get()));
    }
    return makeup
        .composition()
        .flatMap(own -> other.get().map(its -> compare(own, its, percent, than.get())))
        .fold(grounds -> grounds, unknown -> unstated(unknown.why()));
  }

  private static List<Ground> compare(
      Composition own, Composition its, double percent, String than) {
    double sugars = 100 * its.sugars().fraction();
    double less = sugars > 0 ? 100 - 100 * 100 * own.sugars().fraction() / sugars : 0;
    List<Ground> grounds = new ArrayList<>();
    if (less < percent) {
      grounds.add(ground(
          Kind.CONTAINED,
          less < 0
              ? "it has %s %% more sugar than `%s`, and %s %% less is asked for"
              : "it has %s %% less sugar than `%s`, and %s %% less is asked for",
          Display.fixed(Math.abs(less), 1),
          than,
          Display.trimmed(percent, 1)));
    }
    double energy = FoodEnergy.europeanKilocalories(own);
    double itsEnergy = FoodEnergy.europeanKilocalories(its);
    if (energy > itsEnergy) {
      grounds.add(ground(
          Kind.CONTAINED,
          "it has more energy than `%s`: %s and %s kcal in 100 g",
          than,
          Display.fixed(energy, 0),
          Display.fixed(itsEnergy, 0)));
    }
    return grounds;
  }

  /** {@code sugar 0.5}: a family and its grams in 100 g. */
  private List<Ground> amount(String condition, boolean atMost) {
    String[] parts = condition.split(" ");
    Component.Family family = Component.Family.valueOf(parts[0].toUpperCase(Locale.ROOT));
    double limit = Double.parseDouble(parts[1]);
    return makeup
        .composition()
        .map(composition -> composition.share(family).percent())
        .fold(
            grams -> (atMost ? grams <= limit : grams >= limit)
                ? List.of()
                : broken(
                    atMost
                        ? "%s g %s in 100 g, and at most %s g is asked for"
                        : "%s g %s in 100 g, and at least %s g is asked for",
                    Display.fixed(grams, 1),
                    Remark.of(parts[0]),
                    Display.trimmed(limit, 1)),
            unknown -> unstated(unknown.why()));
  }

  private List<Ground> energyShare(double percent) {
    return makeup
        .composition()
        .map(composition -> 100
            * (100 * composition.fraction(Component.PROTEIN) * KILOCALORIES_OF_PROTEIN)
            / Math.max(1e-9, FoodEnergy.europeanKilocalories(composition)))
        .fold(
            share -> share >= percent
                ? List.of()
                : broken(
                    "protein gives %s %% of the energy, and %s %% is asked for",
                    Display.fixed(share, 1), Display.trimmed(percent, 0)),
            unknown -> unstated(unknown.why()));
  }

  private List<Ground> ethanol() {
    return makeup.uses().stream()
        .flatMap(use -> use.composition()
            .fold(
                composition -> composition.fraction(Component.ETHANOL) > 0
                    ? Stream.of(ground(Kind.CONTAINED, use, "`%s` brings alcohol", use.name()))
                    : Stream.<Ground>empty(),
                unknown -> use.says("caution", "alcohol")
                    ? Stream.of(ground(Kind.CONTAINED, use, "`%s` brings alcohol", use.name()))
                    : Stream.of(ground(
                        Kind.UNSTATED, use, "the alcohol of `%s` is not known", use.name()))))
        .toList();
  }

  private List<Ground> certified() {
    List<Ground> grounds = new ArrayList<>();
    grounds.add(ground(Kind.UNSTATED, "only a certifying body can say so; nothing here checks it"));
    ethanol().stream()
        .filter(ground -> ground.kind() == Kind.CONTAINED)
        .map(ground -> new Ground(Kind.UNSTATED, ground.what(), ground.places()))
        .forEach(grounds::add);
    return grounds;
  }

  private static List<Ground> broken(String text, Object... values) {
    return List.of(ground(Kind.CONTAINED, text, values));
  }

  private static List<Ground> unstated(Remark why) {
    return List.of(new Ground(Kind.UNSTATED, why, List.of()));
  }

  private static Ground ground(Kind kind, String text, Object... values) {
    return new Ground(kind, Remark.of(text, values), List.of());
  }

  private static Ground ground(Kind kind, IngredientUse use, String text, Object... values) {
    List<Origin> places = new ArrayList<>();
    use.ways().stream().map(Way::here).distinct().forEach(places::add);
    use.ways().stream()
        .filter(way -> !way.isDirect())
        .map(way -> way.steps().get(way.steps().size() - 1).place())
        .distinct()
        .forEach(places::add);
    return new Ground(kind, Remark.of(text, values), places);
  }
}
