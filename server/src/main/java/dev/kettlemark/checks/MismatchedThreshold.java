package dev.kettlemark.checks;

import dev.kettlemark.model.House;
import dev.kettlemark.model.Threshold;
import java.util.List;
import java.util.Optional;

/**
 * Reports a threshold that a house sets to another kind of figure.
 *
 * <p>It cannot be compared with what the rule measures, so the usual value still holds.
 */
public final class MismatchedThreshold implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
          "mismatched-threshold", "a house sets a threshold to another kind of figure")
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
        .flatMap(setting -> finding(subject, setting).stream())
        .toList();
  }

  private static Optional<Finding> finding(Subject subject, House.Setting setting) {
    return Threshold.named(setting.word().value())
        .filter(threshold -> !threshold.form().fits(setting.value().value()))
        .map(threshold -> INFO.at(
                setting.value().span(),
                "`%s` is %s, not %s",
                threshold.word(),
                threshold.form().words(),
                Columns.shown(setting.value().span().of(subject.text())))
            .because("so the usual limit still holds")
            .withFix(new Fix(
                "Remove the line, as the usual limit holds",
                List.of(WrittenLines.of(subject).without(setting.word().span())))));
  }
}
