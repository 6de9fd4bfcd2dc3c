package dev.kettlemark.checks;

import dev.kettlemark.model.Statement;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reports a trial in which more than one thing was changed.
 *
 * <p>Whatever comes of it, nobody knows which change did it.
 */
public final class TwoChanges implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("two-changes", "a trial changes more than one thing");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    List<Statement> changes = TrialSubject.trial(subject).stream()
        .flatMap(trial -> trial.facts().all("changed"))
        .toList();
    return changes.size() < 2
        ? List.of()
        : Stream.of(changes.get(1))
            .map(second -> INFO.at(
                    second.span(), "this trial changes %d things at once", changes.size())
                .because("whatever comes of it, nobody knows which change did it")
                .withRelated(subject.entry().origin(changes.get(0).span()), "the first change"))
            .toList();
  }
}
