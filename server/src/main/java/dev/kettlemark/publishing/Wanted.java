package dev.kettlemark.publishing;

import dev.kettlemark.sheets.SheetReader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What is to be published.
 *
 * @param readers for whom sheets are made
 * @param locale of the list, the comparisons, and of sheets that declare no language
 * @param statuses what is published; empty for all but what is withdrawn or discontinued
 */
public record Wanted(List<SheetReader> readers, Locale locale, Set<String> statuses) {

  /** What nobody is to make any more. */
  private static final Set<String> ENDED = Set.of("withdrawn", "discontinued");

  public Wanted {
    readers = List.copyOf(readers);
    statuses = Set.copyOf(statuses);
  }

  boolean takes(Optional<String> status) {
    return statuses.isEmpty()
        ? status.filter(ENDED::contains).isEmpty()
        : status.filter(statuses::contains).isPresent();
  }
}
