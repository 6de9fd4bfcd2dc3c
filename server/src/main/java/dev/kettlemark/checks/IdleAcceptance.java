package dev.kettlemark.checks;

import dev.kettlemark.model.Acceptance;
import java.util.List;

/**
 * Reports an acceptance of something that is not found.
 *
 * <p>What it accepted is mended, or was never there; left in place, it would hide the next mistake of
 * its kind.
 */
public final class IdleAcceptance implements Rule {

  private static final RuleInfo INFO = RuleInfo.hint(
          "idle-acceptance", "an acceptance accepts something that is not found")
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
        .filter(acceptance -> Rules.acceptable().contains(acceptance.rule().value()))
        .filter(acceptance -> isIdle(subject, acceptance))
        .map(acceptance -> finding(subject, acceptance))
        .toList();
  }

  /** What has lapsed is told by a rule of its own. */
  private static boolean isIdle(Subject subject, Acceptance acceptance) {
    return subject.found().stream()
            .noneMatch(finding -> acceptance.covers(finding.rule().id(), finding.span()))
        && (acceptance.until().isEmpty() || !acceptance.hasLapsed(subject.today()));
  }

  private static Finding finding(Subject subject, Acceptance acceptance) {
    return INFO.at(
            acceptance.rule().span(),
            "`%s` finds nothing %s",
            acceptance.rule().value(),
            acceptance.scope().isPresent() ? "in this stage" : "here")
        .because("left in place, it would hide the next mistake of its kind")
        .withFix(new Fix(
            "Remove the acceptance", List.of(WrittenLines.of(subject).without(acceptance.span()))));
  }
}
