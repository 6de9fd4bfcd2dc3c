package dev.kettlemark.labelling;

import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;

/**
 * An allergen as the law of a market names it.
 *
 * @param name in the words of the law
 * @param isMajor whether it is stated as an allergen; otherwise only among the ingredients
 * @param words of the pantry that count as it
 * @param printed words by which a label may name it, in lower case
 * @param limit the share of the finished food above which it counts; empty where any amount does
 */
public record AllergenGroup(
    Market market,
    String name,
    boolean isMajor,
    List<String> words,
    List<String> printed,
    Optional<Ratio> limit,
    Law law) {

  private static final List<AllergenGroup> ALL =
      LawTable.read("allergens.txt").stream().map(AllergenGroup::of).toList();

  public AllergenGroup {
    words = List.copyOf(words);
    printed = List.copyOf(printed);
  }

  /** The allergens of a market, in the order of its law. */
  public static List<AllergenGroup> of(Market market) {
    return ALL.stream().filter(group -> group.market() == market).toList();
  }

  /** The allergen that a word of the pantry counts as; empty where the market does not list it. */
  public static Optional<AllergenGroup> of(Market market, String word) {
    return of(market).stream().filter(group -> group.words().contains(word)).findFirst();
  }

  private static AllergenGroup of(LawTable.Row row) {
    return new AllergenGroup(
        row.market().orElseThrow(),
        row.text("group"),
        row.text("kind").equals("allergen"),
        row.list("words"),
        row.list("printed"),
        row.list("limit").stream()
            .findFirst()
            .map(limit -> Ratio.ofPartsPerMillion(Double.parseDouble(limit))),
        row.law());
  }
}
