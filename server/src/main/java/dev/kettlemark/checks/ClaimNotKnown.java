package dev.kettlemark.checks;

import dev.kettlemark.labelling.ClaimAnswer.Ground;
import dev.kettlemark.labelling.ClaimAnswer.Kind;
import dev.kettlemark.labelling.Label;
import java.util.List;

/**
 * Reports a claim of which nobody has stated what decides it.
 *
 * <p>What an ingredient does not say is unknown, and no promise can rest on it.
 */
public final class ClaimNotKnown implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("claim-not-known", "nobody has stated what a claim rests on");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.label().stream()
        .flatMap(label -> StatedWords.of(subject, label, "claim").stream()
            .filter(claim -> claim.grounds(label, Kind.CONTAINED).isEmpty())
            .filter(claim -> !claim.grounds(label, Kind.UNSTATED).isEmpty())
            .map(claim -> finding(label, claim)))
        .toList();
  }

  private static Finding finding(Label label, StatedWords claim) {
    List<Ground> grounds = claim.grounds(label, Kind.UNSTATED);
    // Without a place nothing in the formula can settle it: a certifying body or a serving does.
    boolean canBeSettledHere =
        grounds.stream().anyMatch(ground -> !ground.places().isEmpty());
    Finding finding = INFO.at(
            claim.word().span(),
            "`%s` cannot be known%s: %s",
            claim.word().value(),
            claim.where(label, Kind.UNSTATED),
            StatedWords.told(grounds))
        .because(
            canBeSettledHere
                ? "ask the supplier, and write the answer into the ingredient"
                : "the evidence must come from outside the formula")
        .withFixes(claim.withdraw().stream().toList());
    Finding placed = StatedWords.withPlaces(finding, grounds);
    return canBeSettledHere ? placed : placed.as(Severity.INFORMATION);
  }
}
