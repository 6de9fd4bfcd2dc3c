package dev.kettlemark.checks;

import dev.kettlemark.labelling.ClaimAnswer.Ground;
import dev.kettlemark.labelling.ClaimAnswer.Kind;
import dev.kettlemark.labelling.Label;
import java.util.List;

/**
 * Reports a claim that something is absent beside a warning that it may be there.
 *
 * <p>The two contradict each other. {@code vegan} beside such a warning is none of this: it speaks of what
 * was meant to go in.
 */
public final class FreeFromBesideMayContain implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
          "free-from-beside-may-contain", "a claim of absence stands beside a warning of traces")
      .forSafety();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.label().stream()
        .flatMap(label -> StatedWords.of(subject, label, "claim").stream()
            .filter(claim -> !claim.grounds(label, Kind.TRACES).isEmpty())
            .map(claim -> finding(label, claim)))
        .toList();
  }

  private static Finding finding(Label label, StatedWords claim) {
    List<Ground> grounds = claim.grounds(label, Kind.TRACES);
    Finding finding = INFO.at(
            claim.word().span(),
            "`%s` cannot stand: %s",
            claim.word().value(),
            StatedWords.told(grounds))
        .because("who must not touch it takes the claim as a promise")
        .withFixes(claim.withdraw().stream().toList());
    return StatedWords.withPlaces(finding, grounds);
  }
}
