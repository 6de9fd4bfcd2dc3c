package dev.kettlemark.features;

import dev.kettlemark.model.Located;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a caution warns of, in a sentence for the bench and the table; common practice, no source. */
final class CautionText {

  private static final Map<String, String> SENTENCES = Map.ofEntries(
      Map.entry("hot-sugar", "Hot sugar sticks to the skin and burns deeply."),
      Map.entry("steam", "Steam scalds: pour water into hot sugar slowly and at arm's length."),
      Map.entry(
          "honey-infant", "Not for infants under 12 months: honey may carry spores of botulism."),
      Map.entry(
          "raw-egg",
          "Raw egg: use pasteurised egg for the old, the young, the pregnant and the ill."),
      Map.entry("nut", "Holds nuts or seeds that can cause severe allergic reactions."),
      Map.entry("choking", "Hard or round pieces can choke a small child."),
      Map.entry("powder-dust", "Fine powder: do not breathe the dust."),
      Map.entry("laxative", "Excess consumption may produce laxative effects."),
      Map.entry("alcohol", "Holds alcohol."),
      Map.entry("mixer-guard", "Keep hands, sleeves and tools out of the running mixer."),
      Map.entry(
          "child-activity",
          "Its colours may have an adverse effect on activity and attention in children."));

  private CautionText() {}

  /** One sentence for each caution; a caution without a sentence of its own is named. */
  static String sentences(List<Located<String>> cautions) {
    return cautions.stream()
        .map(
            caution -> SENTENCES.getOrDefault(caution.value(), "Caution: " + caution.value() + "."))
        .collect(Collectors.joining(" "));
  }
}
