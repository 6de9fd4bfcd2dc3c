package dev.kettlemark.features;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** What something is made of, in words. */
final class Constituents {

  /** Less than this share rounds to nothing. */
  private static final double LEAST_SHOWN = 0.0005;

  private Constituents() {}

  /** Every constituent, the largest first. */
  static String all(Outcome<Composition> composition) {
    return composition.fold(
        known -> "Contains "
            + known.present().stream()
                .filter(component -> known.fraction(component) >= LEAST_SHOWN)
                .sorted(Comparator.comparingDouble((Component c) -> -known.fraction(c)))
                .map(component -> component.word() + " "
                    + Display.estimate(Ratio.ofFraction(known.fraction(component))))
                .collect(Collectors.joining(", "))
            + ".",
        unknown -> "Composition unknown: " + unknown.because() + ".");
  }

  /** The groups that decide over a confection. */
  static String groups(Outcome<Composition> composition) {
    return composition.fold(
        Constituents::groups, unknown -> "Composition unknown: " + unknown.because() + ".");
  }

  private static String groups(Composition known) {
    double sucrose = known.fraction(Component.SUCROSE);
    double otherSugars = known.sugars().fraction() - sucrose;
    double protein = known.share(Component.Family.PROTEIN).fraction();
    double fat = known.share(Component.Family.FAT).fraction();
    double oligosaccharides = known.share(Component.Family.OLIGOSACCHARIDE).fraction();
    double polyols = known.share(Component.Family.POLYOL).fraction();
    double named = known.water().fraction()
        + sucrose
        + otherSugars
        + protein
        + fat
        + oligosaccharides
        + polyols;
    List<String> told = new ArrayList<>();
    told.add("water " + Display.estimate(known.water()));
    add(told, "sucrose", sucrose);
    add(told, "other sugars", otherSugars);
    add(told, "higher saccharides", oligosaccharides);
    add(told, "polyols", polyols);
    add(told, "protein", protein);
    add(told, "fat", fat);
    add(told, "other solids", 1 - named);
    return "Contains " + String.join(", ", told) + ".";
  }

  private static void add(List<String> told, String word, double fraction) {
    if (fraction >= LEAST_SHOWN) {
      told.add(word + " " + Display.estimate(Ratio.ofFraction(fraction)));
    }
  }
}
