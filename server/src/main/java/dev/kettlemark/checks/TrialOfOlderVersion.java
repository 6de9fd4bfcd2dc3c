package dev.kettlemark.checks;

import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.library.Entry;
import dev.kettlemark.model.Located;
import java.util.List;
import java.util.Optional;

/**
 * Reports a trial that made an older version of its formula.
 *
 * <p>It says nothing of what the formula has become since, and counts for no correction.
 */
public final class TrialOfOlderVersion implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "trial-of-older-version", "a trial made an older version of its formula");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return TrialSubject.of(subject)
        .filter(trial -> trial.compared().isOlder())
        .flatMap(TrialOfOlderVersion::finding)
        .stream()
        .toList();
  }

  private static Optional<Finding> finding(TrialSubject trial) {
    Optional<Located<String>> name = trial.compared().trial().formula();
    Optional<FormulaVersion> current = trial.compared().current();
    if (name.isEmpty() || current.isEmpty()) {
      return Optional.empty();
    }
    Finding finding = INFO.at(
            name.get().span(),
            "`%s` is now at %s, and this trial made an older one",
            name.get().value(),
            current.get().shown())
        .because("it does not tell what the formula has become since");
    Optional<Entry> formula = trial.formulaEntry();
    return Optional.of(formula
        .map(entry ->
            finding.withRelated(entry.origin(current.get().line().span()), "the version now"))
        .orElse(finding));
  }
}
