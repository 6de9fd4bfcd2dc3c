package dev.kettlemark.labelling;

import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A draft of the list of ingredients.
 *
 * <p>In descending order of weight as used; added water by what is left of the finished weight once all else
 * is taken off, and left out where it is no more than 5 %: Regulation (EU) No 1169/2011, article 18 and annex
 * VII, part A; 21 CFR 101.4(a).
 *
 * @param items heaviest first; what has no known weight last
 * @param text the list as one sentence, allergens in capitals
 * @param contains the statement behind the list, for markets that have one
 * @param remarks what was left out, and what is not known
 */
public record IngredientList(
    Market market, List<Item> items, String text, Optional<String> contains, List<Remark> remarks) {

  /** Annex VII, part A, point 1 of the Regulation. */
  private static final double WATER_LEFT_OUT = 0.05;

  /** A difference of figures that add up to one is off by this much at most. */
  private static final double EXACT = 1e-9;

  /** Annex VII, part A, point 6, and part E, point 2, of the Regulation; 21 CFR 101.4(a)(2). */
  private static final double SMALL = 0.02;

  public IngredientList {
    items = List.copyOf(items);
    remarks = remarks.stream().distinct().toList();
  }

  /** What was left out, and what is not known, in English. */
  public List<String> notes() {
    return Remark.english(remarks);
  }

  /**
   * One name in the list.
   *
   * @param label with its allergens in capitals
   * @param uses the ingredients that bear the name
   * @param share of the finished weight, as used; for water, what is left of it
   * @param named whether the name of the food speaks of it, so that its quantity is stated
   */
  public record Item(String label, List<IngredientUse> uses, Outcome<Ratio> share, boolean named) {

    public Item {
      uses = List.copyOf(uses);
    }

    /** The name, with its quantity where the name of the food speaks of it. */
    String text(Market market) {
      Optional<Ratio> quantity = share.toOptional().filter(s -> named && market == Market.EU);
      if (quantity.isEmpty()) {
        return label;
      }
      double percent = quantity.get().percent();
      String figure = Display.trimmed(percent, percent < 10 ? 1 : 0);
      // Annex VIII, point 3 (a): above 100 % the weight used for 100 g is stated instead.
      String stated = percent > 100 ? figure + " g in 100 g" : figure + " %";
      int bracket = label.indexOf(" (");
      return bracket < 0
          ? label + " (" + stated + ")"
          : label.substring(0, bracket) + " (" + stated + ")" + label.substring(bracket);
    }

    boolean isSmall() {
      return share.map(s -> s.fraction() <= SMALL + EXACT).orElse(false);
    }
  }

  /** Drafts the list. */
  public static IngredientList of(Label label, Market market) {
    List<Remark> notes = new ArrayList<>();
    Map<String, List<IngredientUse>> byLabel = label.makeup().uses().stream()
        .filter(use -> !use.isWater())
        .collect(
            Collectors.groupingBy(IngredientUse::label, LinkedHashMap::new, Collectors.toList()));
    List<Item> items = new ArrayList<>();
    MarketAllergens allergens = MarketAllergens.of(label.allergens(), market);
    byLabel.forEach((name, uses) -> items.add(item(name, uses, label, allergens, notes)));
    water(label, items, notes).ifPresent(items::add);
    items.sort(
        Comparator.comparingDouble(item -> -item.share().map(Ratio::fraction).orElse(-1.0)));
    notesOn(items, market, notes);
    return new IngredientList(market, items, text(items, market), contains(label, market), notes);
  }

  private static Item item(
      String name,
      List<IngredientUse> uses,
      Label label,
      MarketAllergens allergens,
      List<Remark> notes) {
    Outcome<Ratio> share = Outcome.known(Ratio.ZERO);
    for (IngredientUse use : uses) {
      share = Outcome.both(share, use.share(), Ratio::plus);
      if (!use.hasLabel()) {
        notes.add(Remark.of("`%s` has no `label`; its name stands in for it", use.name()));
      }
    }
    share.fold(
        known -> false,
        unknown ->
            notes.add(Remark.of("how much %s there is, is unknown: %s", name, unknown.why())));
    boolean isFlavour = uses.stream()
            .allMatch(use -> use.ingredient().filter(i -> i.hasRole("flavour")).isPresent())
        && share.map(s -> s.fraction() <= SMALL + EXACT).orElse(false);
    String marked = uses.stream()
        .map(use -> Emphasis.of(name, use, allergens))
        .reduce((one, other) -> one.length() >= other.length() ? one : other)
        .orElse(name);
    return new Item(
        marked, uses, share, !isFlavour && NamedInTitle.isNamed(name, label.shownName()));
  }

  /** What is left of the finished weight, since what boiled away was water. */
  private static Optional<Item> water(Label label, List<Item> items, List<Remark> notes) {
    List<IngredientUse> waters =
        label.makeup().uses().stream().filter(IngredientUse::isWater).toList();
    if (waters.isEmpty()) {
      return Optional.empty();
    }
    // What is laid around the mass is not in the weight that the model follows.
    Outcome<Ratio> others = items.stream()
        .filter(item -> item.uses().stream().anyMatch(IngredientUse::isWeighed))
        .map(Item::share)
        .reduce(Outcome.known(Ratio.ZERO), (one, other) -> Outcome.both(one, other, Ratio::plus));
    Outcome<Ratio> left = others.fold(
        sum -> Outcome.known(Ratio.ofFraction(Math.max(0, 1 - sum.fraction()))),
        unknown -> Outcome.unknown(
            Reason.DEPENDS_ON_UNKNOWN, "it is what is left of the rest: %s", unknown.why()));
    boolean isLeftOut =
        left.map(share -> share.fraction() <= WATER_LEFT_OUT + EXACT).orElse(false);
    if (isLeftOut) {
      notes.add(Remark.of(
          "added water is %s of the finished weight and may be left out",
          left.map(Display::percent).orElse("")));
      return Optional.empty();
    }
    left.fold(
        known -> false,
        unknown -> notes.add(Remark.of("the place of water is unknown: %s", unknown.why())));
    return Optional.of(new Item("water", waters, left, false));
  }

  private static void notesOn(List<Item> items, Market market, List<Remark> notes) {
    boolean hasCompound = items.stream()
        .anyMatch(item ->
            item.isSmall() && item.label().contains(", ") && item.label().contains("("));
    if (market == Market.EU) {
      if (items.stream().filter(Item::isSmall).count() > 1) {
        notes.add(Remark.of("what is below 2 % may stand in any order behind the rest"));
      }
      if (hasCompound) {
        notes.add(Remark.of(
            "below 2 % the parts of an ingredient may be left out where Union law defines it;"
                + " its additives and allergens may not"));
      }
    }
    if (items.stream().anyMatch(item -> item.share().map(s -> s.fraction() > 1).orElse(false))) {
      notes.add(
          Remark.of("so much boils away that one ingredient weighs more than the finished food"));
    }
  }

  private static String text(List<Item> items, Market market) {
    List<String> large = new ArrayList<>();
    List<String> small = new ArrayList<>();
    for (Item item : items) {
      (market == Market.US && item.isSmall() ? small : large).add(item.text(market));
    }
    String all = String.join(", ", large);
    if (small.size() > 1) {
      all = all + (large.isEmpty() ? "" : "; ") + "contains 2 % or less of: "
          + String.join(", ", small);
    } else if (!small.isEmpty()) {
      all = all + (large.isEmpty() ? "" : ", ") + small.get(0);
    }
    return all.isEmpty()
        ? ""
        : all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1) + ".";
  }

  /** Behind or beside the list, each nut and fish by its kind: FALCPA, section 203 (a). */
  private static Optional<String> contains(Label label, Market market) {
    if (market != Market.US) {
      return Optional.empty();
    }
    List<String> names = MarketAllergens.of(label.allergens(), market).contained().stream()
        .filter(listed -> listed.group().isMajor())
        .flatMap(listed -> listed.group().words().size() == 1
            ? List.of(listed.group().name()).stream()
            : listed.words().stream().map(word -> word.replace('-', ' ')))
        .toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of("Contains: " + String.join(", ", names) + ".");
  }
}
