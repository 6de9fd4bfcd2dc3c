package dev.kettlemark.checks;

import dev.kettlemark.labelling.ClaimAnswer.Ground;
import dev.kettlemark.labelling.ClaimAnswer.Kind;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Variant;
import java.util.List;
import java.util.Optional;

/**
 * Reports a claim of less sugar that does not say less than what.
 *
 * <p>Without a reference nobody can check the reduction.
 */
public final class LessSugarWithoutReference implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "less-sugar-without-reference", "a claim of less sugar names nothing to compare with");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.label().stream()
        .flatMap(label -> StatedWords.of(subject, label, "claim").stream()
            .filter(claim -> !claim.grounds(label, Kind.NO_REFERENCE).isEmpty())
            .map(claim -> finding(subject, label, claim)))
        .toList();
  }

  private static Finding finding(Subject subject, Label label, StatedWords claim) {
    List<Ground> grounds = claim.grounds(label, Kind.NO_REFERENCE);
    return INFO.at(claim.word().span(), "`%s`: %s", claim.word().value(), StatedWords.told(grounds))
        .because("a reduction is told against a named food of the same kind")
        .withFixes(thanParent(subject, claim).stream().toList())
        .withFixes(claim.withdraw().stream().toList());
  }

  /** A variant is compared with what it varies. */
  private static Optional<Fix> thanParent(Subject subject, StatedWords claim) {
    boolean canName = subject.isWrittenHere(claim.word().span())
        && claim.fact().objectNames().size() == 1
        && claim.fact().clauses().isEmpty();
    return subject
        .variant()
        .filter(variant -> canName)
        .flatMap(Variant::parent)
        .map(Located::value)
        .map(parent -> Fix.insert(
            "Compare with `" + parent + "`", claim.word().span().end(), " of " + parent));
  }
}
