package dev.kettlemark.checks;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Threshold;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Shows beside what a rule finds where the house has set a limit that the rule went by. */
final class HouseLimits {

  private HouseLimits() {}

  /** What a rule finds, with the lines of the house by which it judged. */
  static List<Finding> check(Rule rule, Subject subject) {
    Set<Threshold<?>> asked = new LinkedHashSet<>();
    List<Finding> found = rule.check(subject.telling(asked::add));
    if (found.isEmpty() || asked.isEmpty()) {
      return found;
    }
    Optional<Entry> house = subject.ask(Lookup.houseFor(subject.entry().uri()));
    return house
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof House h ? Optional.of(h) : Optional.empty())
        .map(limits -> found.stream()
            .map(finding -> with(finding, house.get(), limits, asked))
            .toList())
        .orElse(found);
  }

  private static Finding with(Finding finding, Entry house, House limits, Set<Threshold<?>> asked) {
    Finding result = finding;
    for (Threshold<?> threshold : asked) {
      Optional<House.Setting> setting = limits.setting(threshold);
      if (setting.isPresent()) {
        result = result.withRelated(
            house.origin(setting.get().span()), "the house sets `" + threshold.word() + "` here");
      }
    }
    return result;
  }
}
