package dev.kettlemark.checks;

import dev.kettlemark.model.Acceptance;
import dev.kettlemark.reading.Suggestions;
import dev.kettlemark.text.Excerpt;
import java.util.List;
import java.util.Optional;

/**
 * Reports an acceptance of a rule that does not exist, or whose findings cannot be accepted.
 *
 * <p>Its author believes that something is accepted, and nothing is.
 */
public final class UnknownRule implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
          "unknown-rule", "an acceptance names no rule whose findings can be accepted")
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
        .flatMap(acceptance -> check(acceptance).stream())
        .toList();
  }

  private static Optional<Finding> check(Acceptance acceptance) {
    String id = acceptance.rule().value();
    Optional<RuleInfo> rule = Rules.named(id).map(Rule::info);
    if (rule.isPresent()) {
      return rule.filter(known -> !known.acceptable())
          .map(known -> INFO.at(acceptance.rule().span(), "`%s` cannot be accepted", id)
              .because("what it finds has no meaning that anybody could want: " + known.summary()));
    }
    List<String> ids = Rules.acceptable();
    Finding finding = INFO.at(
            acceptance.rule().span(),
            "there is no rule %s%s",
            Excerpt.of(id),
            Suggestions.sentence(id, ids))
        .because("so nothing is accepted");
    for (String near : Suggestions.near(id, ids)) {
      finding =
          finding.withFix(Fix.replace("Write `" + near + "`", acceptance.rule().span(), near));
    }
    return Optional.of(finding);
  }
}
