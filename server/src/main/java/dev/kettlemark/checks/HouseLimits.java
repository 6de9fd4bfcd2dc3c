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

  private final Subject subject;

  /** By which the rule went that looks at the moment. */
  private final Set<Threshold<?>> asked = new LinkedHashSet<>();

  HouseLimits(Subject subject) {
    this.subject = subject.telling(asked::add);
  }

  /** What a rule finds, with the lines of the house by which it judged. */
  List<Finding> check(Rule rule) {
    asked.clear();
    List<Finding> found = rule.check(subject);
    if (found.isEmpty() || asked.isEmpty()) {
      return found;
    }
    Optional<Entry> house = subject.ask(Lookup.houseFor(subject.entry().uri()));
    return house
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof House h ? Optional.of(h) : Optional.empty())
        .map(limits ->
            found.stream().map(finding -> with(finding, house.get(), limits)).toList())
        .orElse(found);
  }

  private Finding with(Finding finding, Entry house, House limits) {
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
