package dev.kettlemark.checks;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.ResolvedFormula;
import dev.kettlemark.labelling.ClaimRule;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.labelling.Makeup;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reports a claim of absence for what is made in a bowl in which another formula makes what is said to be
 * absent.
 */
public final class SharedBowl implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "shared-bowl", "another formula brings into the same bowl what a claim says is absent");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.label().stream()
        .flatMap(label -> StatedWords.of(subject, label, "claim").stream()
            .filter(claim -> !ClaimRule.absent(claim.word().value()).isEmpty())
            .flatMap(claim -> finding(subject, label, claim).stream()))
        .toList();
  }

  private static Optional<Finding> finding(Subject subject, Label label, StatedWords claim) {
    Optional<Formula> own = subject.formula().map(computed -> computed.formula());
    Set<String> bowls = own.map(SharedBowl::bowls).orElse(Set.of());
    if (bowls.isEmpty()) {
      return Optional.empty();
    }
    // Every name of the library is asked for, and only where such a claim is made.
    return subject.ask(Lookup.names(Kind.MATERIAL)).stream()
        .sorted()
        .filter(name -> !name.equals(label.name()))
        .flatMap(name -> other(subject, name, bowls, claim).stream())
        .findFirst();
  }

  private static Optional<Finding> other(
      Subject subject, String name, Set<String> bowls, StatedWords claim) {
    Optional<Formula> formula = subject.ask(Formulas.resolved(name)).map(ResolvedFormula::formula);
    Optional<String> bowl = formula.stream()
        .flatMap(other -> bowls(other).stream())
        .filter(bowls::contains)
        .findFirst();
    if (bowl.isEmpty()) {
      return Optional.empty();
    }
    Optional<Makeup> makeup = subject.ask(Labels.makeup(name));
    return ClaimRule.absent(claim.word().value()).stream()
        .filter(word -> makeup.stream()
            .flatMap(made -> made.uses().stream())
            .anyMatch(use -> use.says("allergen", word)))
        .findFirst()
        .map(word -> OtherPlace.heading(
                INFO.at(
                        claim.word().span(),
                        "`%s`, and `%s` brings %s into `%s` too",
                        claim.word().value(),
                        name,
                        word.replace('-', ' '),
                        bowl.get())
                    .because(
                        "a bowl and a whisk carry foam over; clean them wet, or keep a set apart"),
                subject,
                name,
                "made in the same bowl")
            .withFixes(claim.withdraw().stream().toList()));
  }

  private static Set<String> bowls(Formula formula) {
    return formula.stages().stream()
        .map(Stage::vessel)
        .flatMap(Optional::stream)
        .map(Located::value)
        .collect(Collectors.toUnmodifiableSet());
  }
}
