package dev.kettlemark.comparison;

import dev.kettlemark.comparison.FigureChange.Figure;
import dev.kettlemark.comparison.FigureChange.Group;
import dev.kettlemark.labelling.Allergens;
import dev.kettlemark.labelling.CautionNeed;
import dev.kettlemark.labelling.ClaimAnswer;
import dev.kettlemark.labelling.Diet;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Standing;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a label must and may say. */
final class LabelFigures {

  private LabelFigures() {}

  static Map<Figure, Shown> of(Label label) {
    Map<Figure, Shown> figures = new LinkedHashMap<>();
    allergens(label.allergens(), figures);
    for (Diet.Answer diet : label.diets()) {
      put(figures, diet.diet().word(), diet(diet));
    }
    for (ClaimAnswer claim : label.claims()) {
      put(figures, "claim " + claim.claim() + " (" + claim.market() + ")", claim(claim.standing()));
    }
    for (CautionNeed need : label.cautions()) {
      put(figures, "caution " + need.caution(), need.isStated() ? "stated" : "asked for");
    }
    return figures;
  }

  private static String diet(Diet.Answer answer) {
    return switch (answer.standing()) {
      case HOLDS -> "yes";
      case BROKEN -> "no";
      case UNKNOWN -> "unknown";
    };
  }

  private static String claim(Standing standing) {
    return switch (standing) {
      case HOLDS -> "holds";
      case BROKEN -> "broken";
      case UNKNOWN -> "unknown";
    };
  }

  /** One figure for each word, and of its three standings the gravest. */
  private static void allergens(Allergens allergens, Map<Figure, Shown> figures) {
    allergens.onSite().forEach(word -> allergen(figures, word, "in the house"));
    allergens.mayContain().keySet().forEach(word -> allergen(figures, word, "may contain"));
    allergens.contained().keySet().forEach(word -> allergen(figures, word, "contains"));
    allergens.silent().forEach(use -> allergen(figures, "of " + use.name(), "nobody has said"));
  }

  private static void allergen(Map<Figure, Shown> figures, String word, String standing) {
    figures.put(new Figure(Group.ALLERGEN, "allergen " + word), Shown.word(standing));
  }

  private static void put(Map<Figure, Shown> figures, String name, String word) {
    figures.put(new Figure(Group.LABEL, name), Shown.word(word));
  }
}
