package dev.kettlemark.checks;

import dev.kettlemark.labelling.AdditiveRule;
import dev.kettlemark.labelling.IngredientUse;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.labelling.Way;
import dev.kettlemark.library.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reports an additive that must not be in such a food.
 *
 * <p>Where the house does not say where it sells, the law of each market is only worth knowing.
 */
public final class AdditiveNotPermitted implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
          "additive-not-permitted", "an additive is not permitted in this food")
      .forSafety();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.label().map(AdditiveNotPermitted::check).orElse(List.of());
  }

  private static List<Finding> check(Label label) {
    List<AdditiveRule> rules = AdditiveRule.all().stream()
        .filter(rule -> label.markets().contains(rule.market()))
        .filter(rule -> rule.isAbout(label.facts(), label.shownName()))
        .toList();
    List<Finding> findings = new ArrayList<>();
    for (IngredientUse use : label.makeup().uses()) {
      List<String> known = use.plainNames();
      for (AdditiveRule rule : rules) {
        if (rule.names(known)) {
          findings.add(finding(label, rule, use));
        }
      }
    }
    return findings;
  }

  private static Finding finding(Label label, AdditiveRule rule, IngredientUse use) {
    List<Origin> places = use.ways().stream()
        .flatMap(way -> Stream.of(way.here(), last(way)))
        .distinct()
        .toList();
    Finding finding = INFO.at(
            places.get(0).span(), "`%s` in %s: %s", use.name(), rule.market().place(), rule.what())
        .because(rule.law().words());
    for (Origin place : places.subList(1, places.size())) {
      finding = finding.withRelated(place, "`" + use.name() + "` goes in here");
    }
    boolean isStated = Market.stated(label.house()).contains(rule.market());
    return isStated ? finding : finding.as(Severity.INFORMATION);
  }

  private static Origin last(Way way) {
    return way.steps().get(way.steps().size() - 1).place();
  }
}
