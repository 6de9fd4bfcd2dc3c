package dev.kettlemark.checks;

import dev.kettlemark.labelling.ClaimAnswer.Ground;
import dev.kettlemark.labelling.ClaimAnswer.Kind;
import dev.kettlemark.labelling.Label;
import java.util.List;
import java.util.Set;

/**
 * Reports a claim that what is in the food breaks.
 *
 * <p>People choose by it, some of them for their health.
 */
public final class ClaimNotTrue implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("claim-not-true", "a claim is broken by what is in it").forSafety();

  /** Judged by an estimated composition, which a laboratory may correct. */
  private static final Set<String> ESTIMATED =
      Set.of("less-sugar", "low-sugar", "sugar-free", "high-protein", "high-fibre");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.label().stream()
        .flatMap(label -> StatedWords.of(subject, label, "claim").stream()
            .filter(claim -> !claim.grounds(label, Kind.CONTAINED).isEmpty())
            .map(claim -> finding(label, claim)))
        .toList();
  }

  private static Finding finding(Label label, StatedWords claim) {
    List<Ground> grounds = claim.grounds(label, Kind.CONTAINED);
    Finding finding = INFO.at(
            claim.word().span(),
            "`%s` is not true%s: %s",
            claim.word().value(),
            claim.where(label, Kind.CONTAINED),
            StatedWords.told(grounds))
        .because("people choose by a claim, some of them for their health")
        .withFixes(claim.withdraw().stream().toList());
    Finding placed = StatedWords.withPlaces(finding, grounds);
    return ESTIMATED.contains(claim.word().value()) ? placed.as(Severity.WARNING) : placed;
  }
}
