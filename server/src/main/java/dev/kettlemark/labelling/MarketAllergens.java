package dev.kettlemark.labelling;

import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Remark;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The allergens of what is made as one market lists them.
 *
 * @param contained in the order of the law
 * @param mayContain likewise; a group that is contained may stand here too, for another of its kinds
 * @param onSite what the house handles besides
 * @param remarks what was left out and why, and what is not known
 */
public record MarketAllergens(
    Market market,
    List<Listed> contained,
    List<Listed> mayContain,
    List<Listed> onSite,
    List<Remark> remarks) {

  /** A product of figures is off by this share of itself at most. */
  private static final double EXACT = 1e-9;

  public MarketAllergens {
    contained = List.copyOf(contained);
    mayContain = List.copyOf(mayContain);
    onSite = List.copyOf(onSite);
    remarks = remarks.stream().distinct().toList();
  }

  /** What was left out, and what is not known, in English. */
  public List<String> notes() {
    return Remark.english(remarks);
  }

  /**
   * One allergen of the market's list.
   *
   * @param words the pantry's words that make it up here
   * @param sources the ingredients that bring it, or warn of it
   */
  public record Listed(AllergenGroup group, List<String> words, List<IngredientUse> sources) {

    public Listed {
      words = List.copyOf(words);
      sources = List.copyOf(sources);
    }

    /** {@code nuts (almond, pistachio)}, or the group alone where it has one kind only. */
    public String text() {
      return group.words().size() == 1
          ? group.name()
          : group.name() + " ("
              + String.join(", ", words.stream().map(w -> w.replace('-', ' ')).toList())
              + ")";
    }
  }

  /** Whether the market has it stated: it is in the food, and above its limit where it has one. */
  boolean isContained(AllergenGroup group) {
    return contained.stream().anyMatch(listed -> listed.group().equals(group));
  }

  /** Reads the pantry's words by a market's law. */
  public static MarketAllergens of(Allergens allergens, Market market) {
    List<Remark> notes = new ArrayList<>();
    List<Listed> contained = new ArrayList<>();
    for (AllergenGroup group : AllergenGroup.of(market)) {
      listed(group, allergens.contained(), market, notes)
          .filter(listed -> isAboveLimit(group, allergens, notes))
          .ifPresent(contained::add);
    }
    List<Listed> mayContain = AllergenGroup.of(market).stream()
        .flatMap(group -> listed(group, allergens.mayContain(), market, notes).stream())
        .toList();
    List<Listed> onSite = AllergenGroup.of(market).stream()
        .flatMap(group -> among(group, allergens.onSite()).stream())
        .toList();
    allergens.contained().keySet().stream()
        .filter(word -> AllergenGroup.of(market, word).isEmpty())
        .map(word -> Remark.of(
            "`%s` is no listed allergen in %s",
            new Remark.Word("allergen", word), Remark.of(market.place())))
        .forEach(notes::add);
    allergens.silent().stream()
        .map(use ->
            Remark.of("the allergens of `%s` are unknown: nobody has stated them", use.name()))
        .forEach(notes::add);
    return new MarketAllergens(market, contained, mayContain, onSite, notes);
  }

  private static Optional<Listed> listed(
      AllergenGroup group,
      Map<String, List<IngredientUse>> byWord,
      Market market,
      List<Remark> notes) {
    List<String> words = new ArrayList<>();
    List<IngredientUse> sources = new ArrayList<>();
    for (String word : group.words()) {
      List<IngredientUse> all = byWord.get(word);
      if (all == null) {
        continue;
      }
      List<IngredientUse> counting = new ArrayList<>();
      for (IngredientUse use : all) {
        Optional<Exemption> exemption = Exemption.of(market, word, use);
        exemption
            .map(e -> Remark.of(
                "`%s` needs no statement of %s: %s",
                use.name(), new Remark.Word("allergen", word), e.law().citation()))
            .ifPresentOrElse(notes::add, () -> counting.add(use));
      }
      if (!counting.isEmpty() || all.isEmpty()) {
        words.add(word);
        counting.stream().filter(use -> !sources.contains(use)).forEach(sources::add);
      }
    }
    return words.isEmpty() ? Optional.empty() : Optional.of(new Listed(group, words, sources));
  }

  private static Optional<Listed> among(AllergenGroup group, Collection<String> words) {
    List<String> found = group.words().stream().filter(words::contains).toList();
    return found.isEmpty() ? Optional.empty() : Optional.of(new Listed(group, found, List.of()));
  }

  /** An amount that nobody has stated counts, and a note says that it is not known. */
  private static boolean isAboveLimit(
      AllergenGroup group, Allergens allergens, List<Remark> notes) {
    if (group.limit().isEmpty()) {
      return true;
    }
    Ratio limit = group.limit().get();
    return allergens
        .sulphite()
        .fold(
            share -> {
              boolean isAbove = share.fraction() > limit.fraction() * (1 + EXACT);
              notes.add(Remark.of(
                  isAbove
                      ? "sulphur dioxide comes to %s mg/kg, above the limit of %s mg/kg"
                      : "sulphur dioxide comes to %s mg/kg, within the limit of %s mg/kg",
                  Display.trimmed(share.partsPerMillion(), 1),
                  Display.trimmed(limit.partsPerMillion(), 0)));
              return isAbove;
            },
            unknown -> {
              notes.add(
                  Remark.of("how much sulphur dioxide there is, is unknown: %s", unknown.why()));
              return true;
            });
  }
}
