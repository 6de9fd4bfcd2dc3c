package dev.kettlemark.comparison;

import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A finding that only one of the two states has.
 *
 * @param severity {@code error}, {@code warning}, {@code information} or {@code hint}
 * @param rule the id of the rule
 */
public record Told(String severity, String rule, String message) {

  /** What is told of some sections. */
  static List<Told> of(Snapshot snapshot, List<Entry> entries) {
    return entries.stream()
        .flatMap(entry -> Rules.of(snapshot, entry).stream())
        .map(finding -> new Told(
            finding.severity().name().toLowerCase(Locale.ROOT),
            finding.rule().id(),
            finding.message()))
        .toList();
  }

  /** What is told in one state and not in another, each as often as it is told more. */
  static List<Told> without(List<Told> all, List<Told> others) {
    List<Told> left = new ArrayList<>(all);
    others.forEach(left::remove);
    return List.copyOf(left);
  }
}
