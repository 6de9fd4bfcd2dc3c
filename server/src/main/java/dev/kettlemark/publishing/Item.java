package dev.kettlemark.publishing;

import dev.kettlemark.library.Entry;
import java.util.List;
import java.util.Optional;

/**
 * A formula, variant or product that is published.
 *
 * @param file the name of its files, without reader and ending
 * @param errors what is held against it
 * @param row what the list tells of it
 */
record Item(Entry entry, Sort sort, String file, List<String> errors, ItemRow row) {

  /** What it is. */
  enum Sort {
    FORMULA,
    VARIANT,
    PRODUCT
  }

  Item {
    errors = List.copyOf(errors);
  }

  String name() {
    return row.name();
  }

  /** Whether it is a sketch that nobody should take for a recipe. */
  boolean isDraft() {
    return row.status().equals("draft") || !errors.isEmpty();
  }

  Optional<String> status() {
    return Optional.of(row.status()).filter(status -> !status.isEmpty());
  }
}
