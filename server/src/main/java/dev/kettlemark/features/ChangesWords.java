package dev.kettlemark.features;

import dev.kettlemark.comparison.FigureChange.Group;
import dev.kettlemark.comparison.ItemChange;
import dev.kettlemark.comparison.KeptDose;
import dev.kettlemark.comparison.LibraryComparison;
import dev.kettlemark.comparison.SectionEdit;
import dev.kettlemark.comparison.Shown;
import dev.kettlemark.comparison.Told;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.stream.Stream;

/** How a {@link LibraryComparison} is told, in the editor and in the terminal alike. */
final class ChangesWords {

  static final String NOTHING = "Nothing changed: both states say the same and make the same.";
  static final String NO_FOLLOWS = "No formula, variant or product looks different for it.";
  static final String TRY =
      "Equal matter is not yet an equal foam or gel: try a small batch before you change a dose.";

  /** Of so many causes each is named. */
  private static final int MOST_CAUSES = 6;

  private ChangesWords() {}

  /** {@code ingredient egg-white-powder, changed}. */
  static String heading(SectionEdit edit) {
    String name = edit.name().isEmpty() ? "outside of all sections" : edit.name();
    return edit.word() + " " + name + ", " + edit.how().words();
  }

  /** {@code variant heather-nougat-vegan}, with what became of it where that is all. */
  static String heading(ItemChange item) {
    String name = item.name().isEmpty() ? "outside of all sections" : item.name();
    return item.word() + " " + name
        + switch (item.how()) {
          case NEW -> ", new";
          case GONE -> ", gone";
          case CHANGED -> "";
        };
  }

  /** {@code by roasted-almond, house}; the own text where that is what changed. */
  static String causes(ItemChange item) {
    if (item.causes().isEmpty()) {
      return "by what stands beside it in the library";
    }
    List<String> names = item.causes().stream()
        .map(name -> name.equals(item.name()) ? "its own text" : name)
        .toList();
    int rest = names.size() - MOST_CAUSES;
    return "by " + String.join(", ", names.subList(0, Math.min(MOST_CAUSES, names.size())))
        + (rest > 0 ? " and " + rest + " more" : "");
  }

  static String title(Group group) {
    return switch (group) {
      case AMOUNT -> "amounts";
      case MASS -> "what is made";
      case ALLERGEN -> "allergens";
      case LABEL -> "diets, claims and cautions";
    };
  }

  /** {@code warning below-scale: …}. */
  static String finding(Told told) {
    return told.severity() + " " + told.rule() + ": " + told.message();
  }

  /** {@code egg-white-powder states 72.00 % protein, before 80.00 %}. */
  static String stated(KeptDose dose) {
    return dose.ingredient() + " now states " + dose.measure() + " "
        + dose.stated().after().text() + ", before " + dose.stated().before().text();
  }

  /** {@code 1.11 % (20.0 g)}, with the other rule where it takes noticeably more or less. */
  static String kept(KeptDose dose) {
    return Display.percent(dose.kept())
        + dose.keptGrams().map(mass -> " (" + Display.mass(mass) + ")").orElse("")
        + dose.otherwise()
            .map(other -> ", by the linear rule " + Display.percent(other))
            .orElse("")
        + (isKept(dose) ? ", as it is" : "");
  }

  private static boolean isKept(KeptDose dose) {
    return Display.percent(dose.now()).equals(Display.percent(dose.kept()));
  }

  static String dose(Ratio share) {
    return Display.percent(share);
  }

  /** Why figures are unknown, each reason once. */
  static List<String> reasons(ItemChange item) {
    return item.figures().stream()
        .flatMap(change -> Stream.of(change.before(), change.after())
            .map(Shown::because)
            .filter(because -> !because.isEmpty())
            .map(because -> change.figure().name() + " unknown: " + because))
        .distinct()
        .toList();
  }
}
