package dev.kettlemark.checks;

import dev.kettlemark.analysis.Trials;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Trial;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reports a trial that does not say which lot of its whipping or gelling agent went in.
 *
 * <p>These act by their dose and differ from lot to lot; without the lot nobody can tell a bad formula
 * from a bad delivery.
 */
public final class MissingLot implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("missing-lot", "a trial does not name the lot of what whips or gels");

  /** Roles of what acts by its dose, and what they do; common practice, no source. */
  private static final Map<String, String> CRITICAL =
      Map.of("whipping", "makes the foam", "gelling", "makes the gel");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Optional<Trial> trial = Trials.trial(subject.entry());
    if (trial.isEmpty()) {
      return List.of();
    }
    Set<String> traced = trial.get().facts().wordsOf("lot").stream()
        .map(name -> name.value())
        .collect(Collectors.toUnmodifiableSet());
    return TrialSubject.of(subject).stream()
        .flatMap(compared -> compared.compared().formula().formula().amounts().stream())
        .map(AmountLine::ingredient)
        .map(name -> name.value())
        .distinct()
        .filter(name -> !traced.contains(name))
        .flatMap(name -> subject.ingredient(name).flatMap(MissingLot::critical).stream()
            .map(what -> INFO.at(trial.get().name().span(), "no lot of `%s`, which %s", name, what)
                .because("it differs from lot to lot, and a poor batch cannot be traced")))
        .toList();
  }

  private static Optional<String> critical(Ingredient ingredient) {
    return ingredient.roles().stream()
        .filter(CRITICAL::containsKey)
        .findFirst()
        .map(role -> CRITICAL.getOrDefault(role, ""));
  }
}
