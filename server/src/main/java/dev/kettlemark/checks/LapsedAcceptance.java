package dev.kettlemark.checks;

import dev.kettlemark.model.Acceptance;
import java.util.List;

/**
 * Reports an acceptance whose last day has passed.
 *
 * <p>It no longer holds: what it accepted is told again.
 */
public final class LapsedAcceptance implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
          "lapsed-acceptance", "the last day of an acceptance has passed")
      .neverAccepted();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public boolean isAboutAcceptances() {
    return true;
  }

  /** Only a section with a last day asks for the day, so that only such sections are judged anew. */
  @Override
  public List<Finding> check(Subject subject) {
    return subject.acceptances().stream()
        .filter(acceptance -> acceptance.until().isPresent())
        .filter(acceptance -> acceptance.hasLapsed(subject.today()))
        .map(acceptance -> finding(subject, acceptance))
        .toList();
  }

  private static Finding finding(Subject subject, Acceptance acceptance) {
    return INFO.at(
            acceptance.span(),
            "`%s` was accepted until %s",
            acceptance.rule().value(),
            acceptance.until().orElseThrow())
        .because("it no longer holds; see whether its reason still does, and write a later day")
        .withFix(new Fix(
            "Remove the acceptance", List.of(WrittenLines.of(subject).without(acceptance.span()))));
  }
}
