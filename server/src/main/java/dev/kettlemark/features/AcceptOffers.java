package dev.kettlemark.features;

import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rule;
import dev.kettlemark.checks.RuleInfo;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import java.util.List;
import java.util.stream.Stream;

/** The rules that an acceptance may name: first those that find something in its section. */
final class AcceptOffers {

  private AcceptOffers() {}

  static List<Offer> of(Snapshot snapshot, Entry entry) {
    Stream<RuleInfo> found = Rules.of(snapshot, entry).stream().map(Finding::rule);
    return Stream.concat(found, Rules.all().stream().map(Rule::info))
        .filter(RuleInfo::acceptable)
        .distinct()
        .map(rule -> Offer.of(rule.id(), Kind.WORD, rule.summary()))
        .toList();
  }
}
