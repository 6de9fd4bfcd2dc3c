package dev.kettlemark.labelling;

import dev.kettlemark.model.Facts;
import java.util.List;

/**
 * Something that must not be in a food of a market.
 *
 * @param food {@code any}, {@code jelly} or {@code mini-cup}
 * @param names of which an ingredient bears one
 * @param what one plain clause in lower case
 */
public record AdditiveRule(Market market, String food, List<Phrase> names, String what, Law law) {

  private static final List<AdditiveRule> ALL = LawTable.read("additives.txt").stream()
      .map(row -> new AdditiveRule(
          row.market().orElseThrow(),
          row.text("food"),
          Phrase.all(row.list("names")),
          row.text("what"),
          row.law()))
      .toList();

  private static final List<Phrase> MINI_CUPS =
      Phrase.all(List.of("mini cup", "mini cups", "jelly cup", "jelly cups"));

  public AdditiveRule {
    names = List.copyOf(names);
  }

  public static List<AdditiveRule> all() {
    return ALL;
  }

  /** Whether the rule speaks of such a food, by its texture and its display name. */
  public boolean isAbout(Facts facts, String shownName) {
    return switch (food) {
      case "any" -> true;
      case "jelly" -> facts.says("texture", "gelled") || isMiniCup(shownName);
      case "mini-cup" -> isMiniCup(shownName);
      default -> throw new IllegalStateException("no food is named " + food);
    };
  }

  /** @param known the {@linkplain IngredientUse#plainNames plain names} of an ingredient */
  public boolean names(List<String> known) {
    return Phrase.isAnyIn(known, names);
  }

  private static boolean isMiniCup(String shownName) {
    return Phrase.isAnyIn(List.of(Phrase.plain(shownName)), MINI_CUPS);
  }
}
