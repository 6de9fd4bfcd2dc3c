package dev.kettlemark.checks;

import dev.kettlemark.model.Acceptance;
import dev.kettlemark.model.Located;
import java.util.List;

/**
 * Reports an acceptance without a reason.
 *
 * <p>Whoever reads the formula next cannot tell whether it still holds. Until a reason is written,
 * nothing is accepted.
 */
public final class UnfilledReason implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
          "unfilled-reason", "an acceptance does not say why, and so does not hold")
      .neverAccepted();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public boolean isAboutAcceptances() {
    return true;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.acceptances().stream()
        .filter(acceptance -> !acceptance.hasReason())
        .map(acceptance -> finding(subject, acceptance))
        .toList();
  }

  private static Finding finding(Subject subject, Acceptance acceptance) {
    return INFO.at(
            acceptance.reason().map(Located::span).orElse(acceptance.span()),
            "`%s` is accepted without a reason",
            acceptance.rule().value())
        .because(
            "without a reason in quotes nobody can tell later whether it still holds, and until"
                + " then it does not")
        .withFix(new Fix(
            "Remove the acceptance", List.of(WrittenLines.of(subject).without(acceptance.span()))));
  }
}
