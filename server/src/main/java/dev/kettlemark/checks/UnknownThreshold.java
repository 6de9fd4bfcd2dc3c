package dev.kettlemark.checks;

import dev.kettlemark.model.House;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.reading.Suggestions;
import dev.kettlemark.text.Excerpt;
import java.util.List;

/**
 * Reports a threshold that a house sets and nothing asks for.
 *
 * <p>The house believes to have set a limit, and the usual one still holds.
 */
public final class UnknownThreshold implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
          "unknown-threshold", "a house sets a threshold that does not exist")
      .neverAccepted();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.declaration().stream()
        .flatMap(d -> d instanceof House house
            ? house.settings().stream()
            : List.<House.Setting>of().stream())
        .filter(setting -> Threshold.named(setting.word().value()).isEmpty())
        .map(UnknownThreshold::finding)
        .toList();
  }

  private static Finding finding(House.Setting setting) {
    String word = setting.word().value();
    List<String> words = Threshold.words();
    Finding finding = INFO.at(
            setting.word().span(),
            "there is no threshold %s%s",
            Excerpt.of(word),
            Suggestions.sentence(word, words))
        .because("so the usual limit still holds");
    for (String near : Suggestions.near(word, words)) {
      finding =
          finding.withFix(Fix.replace("Write `" + near + "`", setting.word().span(), near));
    }
    return finding;
  }
}
