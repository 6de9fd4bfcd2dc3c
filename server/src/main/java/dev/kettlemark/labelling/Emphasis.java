package dev.kettlemark.labelling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sets the allergens off in a list of ingredients, in capitals: Regulation (EU) No 1169/2011, article 21. */
final class Emphasis {

  private Emphasis() {}

  /**
   * The label with its allergens in capitals; one that it does not name is added in brackets.
   *
   * <p>What stays within the limit of its group, as sulphites do up to 10 mg/kg, is no allergen of the list.
   */
  static String of(String label, IngredientUse use, MarketAllergens allergens) {
    Market market = allergens.market();
    String text = label;
    List<String> unnamed = new ArrayList<>();
    List<AllergenGroup> stated = use.words("allergen").stream()
        .filter(word -> Exemption.of(market, word, use).isEmpty())
        .flatMap(word -> AllergenGroup.of(market, word).stream())
        .filter(allergens::isContained)
        .toList();
    for (AllergenGroup group : stated) {
      String marked = marked(text, group.printed());
      boolean isNamed = group.printed().stream().anyMatch(printed -> Phrase.isIn(label, printed));
      if (!isNamed && unnamed.stream().noneMatch(known -> known.equals(group.name()))) {
        unnamed.add(group.name());
      }
      text = marked;
    }
    String behind =
        unnamed.isEmpty() ? "" : " (" + String.join(", ", unnamed).toUpperCase(Locale.ROOT) + ")";
    return text + behind;
  }

  private static String marked(String text, List<String> printed) {
    StringBuilder marked = new StringBuilder(text);
    String plain = Phrase.plain(text);
    for (String word : printed) {
      Phrase phrase = Phrase.of(word);
      int place = phrase.placeIn(plain, 0);
      while (place != Phrase.NOWHERE) {
        int end = place + phrase.length();
        marked.replace(place, end, text.substring(place, end).toUpperCase(Locale.ROOT));
        place = phrase.placeIn(plain, end);
      }
    }
    return marked.toString();
  }
}
