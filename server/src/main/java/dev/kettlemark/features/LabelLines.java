package dev.kettlemark.features;

import dev.kettlemark.labelling.Diet;
import dev.kettlemark.labelling.IngredientUse;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.labelling.MarketAllergens;
import dev.kettlemark.labelling.MarketAllergens.Listed;
import java.util.List;
import java.util.stream.Collectors;

/** What a label says of allergens and diets, in one line each. */
final class LabelLines {

  private static final int MOST_NAMES = 3;

  private LabelLines() {}

  /** Allergens, traces and diets, as lines of one paragraph. */
  static String of(Label label) {
    List<MarketAllergens> markets = label.markets().stream()
        .map(market -> MarketAllergens.of(label.allergens(), market))
        .toList();
    boolean alike = markets.stream().map(LabelLines::contained).distinct().count() == 1
        && markets.stream().map(LabelLines::traces).distinct().count() == 1;
    String allergens = markets.stream()
        .limit(alike ? 1 : markets.size())
        .map(market -> allergens(market, alike ? "" : " (" + market.market().name() + ")"))
        .collect(Collectors.joining("  \n"));
    return allergens + unknown(label) + "  \nDiet: " + diets(label) + ".";
  }

  private static String allergens(MarketAllergens market, String of) {
    String contained = contained(market);
    String traces = traces(market);
    return "Allergens" + of + ": " + (contained.isEmpty() ? "none stated" : contained) + "."
        + "  \nMay contain" + of + ": " + (traces.isEmpty() ? "nothing stated" : traces) + ".";
  }

  private static String contained(MarketAllergens market) {
    return names(market.contained());
  }

  private static String traces(MarketAllergens market) {
    return names(market.mayContain());
  }

  /** {@code eggs, nuts (almond)}. */
  static String names(List<Listed> listed) {
    return listed.stream().map(Listed::text).collect(Collectors.joining(", "));
  }

  private static String unknown(Label label) {
    List<IngredientUse> silent = label.allergens().silent();
    return silent.isEmpty()
        ? ""
        : "  \nAllergens unknown of "
            + Markdown.some(silent.stream().map(IngredientUse::name).toList(), MOST_NAMES) + ".";
  }

  private static String diets(Label label) {
    return label.diets().stream().map(LabelLines::diet).collect(Collectors.joining("; "));
  }

  /** {@code vegan no (`honey`)}. */
  private static String diet(Diet.Answer answer) {
    return switch (answer.standing()) {
      case HOLDS -> answer.diet().word() + " yes";
      case BROKEN -> answer.diet().word() + " no (" + some(answer.offenders()) + ")";
      case UNKNOWN -> answer.diet().word() + " unknown (" + some(answer.silent()) + " silent)";
    };
  }

  private static String some(List<IngredientUse> uses) {
    return Markdown.some(uses.stream().map(IngredientUse::name).toList(), MOST_NAMES);
  }

  /** The market in the words of a heading. */
  static String heading(Market market) {
    return "for " + market.place();
  }
}
