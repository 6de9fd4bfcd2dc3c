package dev.kettlemark.features;

import dev.kettlemark.checks.RulePages;
import dev.kettlemark.library.Thresholds;
import dev.kettlemark.model.Threshold;
import java.util.List;
import java.util.Optional;

/** What is to be said of a rule: its page, and what of it a house may set. */
public final class RuleText {

  private RuleText() {}

  /** The page of a rule in Markdown, with the thresholds that it goes by. */
  public static Optional<String> page(String rule) {
    return RulePages.page(rule).map(page -> {
      List<Threshold<?>> thresholds = thresholds(rule);
      return thresholds.isEmpty() ? page : page.stripTrailing() + "\n\n" + settings(thresholds);
    });
  }

  /** The thresholds that a rule goes by, as its page names them. */
  static List<Threshold<?>> thresholds(String rule) {
    String page = RulePages.page(rule).orElse("");
    return Threshold.all().stream()
        .filter(threshold -> page.contains("`" + threshold.word() + "`")
            || page.contains("`threshold " + threshold.word() + "`"))
        .toList();
  }

  private static String settings(List<Threshold<?>> thresholds) {
    StringBuilder text = new StringBuilder("## What a house may set\n\n"
        + "A line of its `house` section sets a limit; the reason and the day belong to it.\n\n");
    for (Threshold<?> threshold : thresholds) {
      text.append("- `threshold ")
          .append(threshold.word())
          .append(' ')
          .append(ThresholdText.value(Thresholds.usual(threshold)))
          .append("`: ")
          .append(threshold.meaning())
          .append('\n');
    }
    return text.toString();
  }
}
