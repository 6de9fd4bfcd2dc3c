package dev.kettlemark.checks;

import java.util.List;

/**
 * Reports a usual dose that does not say who says so.
 *
 * <p>Nobody can then judge a dose outside it.
 */
public final class UseWithoutSource implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("use-without-source", "a usual dose names no source");

  private static final String COMMON = "common practice, no source";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return OwnIngredient.of(subject).stream()
        .flatMap(own -> own.facts().all("use"))
        .filter(fact -> fact.text().filter(text -> !text.value().isBlank()).isEmpty())
        .map(fact -> {
          Finding finding = INFO.at(fact.span(), "this dose names no source")
              .because("nobody can judge a dose outside it without knowing who says so");
          return fact.text().isPresent()
              ? finding
              : finding.withFix(Fix.insert(
                  "Write `from \"" + COMMON + "\"`",
                  fact.span().end(),
                  "  from \"" + COMMON + "\""));
        })
        .toList();
  }
}
