package dev.kettlemark.labelling;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where a row of a table comes from.
 *
 * @param citation the law and its place in it, or {@code common practice, no source}
 * @param since the day from which it applies; empty for what is no law
 * @param read whether the text was read or is quoted from memory
 */
public record Law(String citation, Optional<LocalDate> since, String read) {

  /** {@code Regulation (EU) No 1169/2011, annex II, point 3, since 2014-12-13, from memory}. */
  public String words() {
    return since
        .map(day -> citation + ", since " + day + ", " + read)
        .orElse(citation.contains(read) ? citation : citation + ", " + read);
  }
}
