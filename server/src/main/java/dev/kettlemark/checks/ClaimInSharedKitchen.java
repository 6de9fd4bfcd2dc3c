package dev.kettlemark.checks;

import dev.kettlemark.labelling.ClaimAnswer.Ground;
import dev.kettlemark.labelling.ClaimAnswer.Kind;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.model.House;
import java.util.List;

/**
 * Reports a claim of absence in a house that handles what is said to be absent.
 *
 * <p>Dust, hands and shared tools carry it over.
 */
public final class ClaimInSharedKitchen implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
          "claim-in-shared-kitchen", "the house handles what a claim says is absent")
      .forSafety();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.label().stream()
        .flatMap(label -> StatedWords.of(subject, label, "claim").stream()
            .filter(claim -> claim.grounds(label, Kind.CONTAINED).isEmpty())
            .filter(claim -> claim.grounds(label, Kind.TRACES).isEmpty())
            .filter(claim -> !claim.grounds(label, Kind.ON_SITE).isEmpty())
            .map(claim -> OtherPlace.house(finding(label, claim), subject, "allergens-on-site")))
        .toList();
  }

  private static Finding finding(Label label, StatedWords claim) {
    List<Ground> grounds = claim.grounds(label, Kind.ON_SITE);
    return INFO.at(
            claim.word().span(),
            "`%s` is not safe in %s: %s",
            claim.word().value(),
            label.house().map(House::shownName).orElse("this house"),
            StatedWords.told(grounds))
        .because("dust, hands and tools carry traces over; only separate making and analysis show"
            + " that there are none")
        .withFixes(claim.withdraw().stream().toList());
  }
}
